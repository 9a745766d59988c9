using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Opens every breaker as a row of a table.</summary>
internal sealed class TableCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.T.WithShift];

    public override string KeyName => "T";

    public override string Title => "All breakers as a table";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new TablePage(editor.Session, editor.Session.Here?.Ordinal));
}
