using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Stays in the editor.</summary>
internal sealed class StayCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Esc];

    public override string KeyName => "Esc";

    public override string Title => "Stay";

    public override string? Hint => "stay";

    public override EditorMode Modes => EditorMode.Leaving;

    public override void Run(IEditor editor) => editor.Enter(EditorMode.Face);
}
