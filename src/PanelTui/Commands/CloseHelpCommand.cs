using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Closes the page of keys.</summary>
internal sealed class CloseHelpCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Esc, Key.Enter, new Key('?'), Key.Q];

    public override string KeyName => "Esc";

    public override string Title => "Close this page";

    public override string? Hint => "back";

    public override EditorMode Modes => EditorMode.Help;

    public override void Run(IEditor editor) => editor.Enter(EditorMode.Face);
}
