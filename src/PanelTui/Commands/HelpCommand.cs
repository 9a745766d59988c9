using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Shows every key that works here.</summary>
internal sealed class HelpCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [new Key('?'), Key.F1];

    public override string KeyName => "?";

    public override string Title => "Keys";

    public override string? Hint => "keys";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Enter(EditorMode.Help);
}
