using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Shows every key that works here.</summary>
internal sealed class HelpCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [new Key('?'), Key.F1];

    public override string KeyName => "?";

    public override string Title => "Keys";

    public override string? Hint => "keys";

    public override EditorMode Modes => EditorMode.Face | EditorMode.Page;

    public override string? WhyNot(IEditor editor) => editor.Page switch
    {
        { TakesText: true } => "Letters narrow this list down; Esc goes back",
        KeysPage => "These are the keys; Esc goes back",
        _ => null,
    };

    public override void Run(IEditor editor) => editor.Open(new KeysPage(editor.Page));
}
