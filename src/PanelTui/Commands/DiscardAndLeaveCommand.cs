using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Leaves without saving.</summary>
internal sealed class DiscardAndLeaveCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.D];

    public override string KeyName => "d";

    public override string Title => "Quit and lose the changes";

    public override string? Hint => "quit and lose the changes";

    public override EditorMode Modes => EditorMode.Leaving;

    public override void Run(IEditor editor) => editor.Leave();
}
