using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Searches every command by its name.</summary>
internal sealed class CommandsCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [new Key(':')];

    public override string KeyName => ":";

    public override string Title => "Search all commands";

    public override string? Hint => "commands";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new CommandsPage(editor));
}
