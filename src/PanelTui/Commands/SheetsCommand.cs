using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Shows the sheets for the door and the permit folder.</summary>
internal sealed class SheetsCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.P.WithShift];

    public override string KeyName => "P";

    public override string Title => "Preview the printed sheets";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new SheetPage());
}
