using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>Every command with its key, in two columns.</summary>
internal sealed class KeysPage : Page
{
    private const EditorMode OnTheFace = EditorMode.Face | EditorMode.Hand;

    public override string Title(Session session) => "Keys on the face of the panel";

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var half = columns / 2;
        var entries = CommandBook.All
            .Where(command => (command.Modes & OnTheFace) != 0)
            .Select(command => DisplayText.Fit($"{DisplayText.Fit(command.KeyName, 6)} {command.Title}", half - 1)).ToList();
        var rows = (entries.Count + 1) / 2;
        return
        [
            .. Enumerable.Range(0, rows).Select(row => new PageRow(
                $"{entries[row]} {(row + rows < entries.Count ? entries[row + rows] : "")}")),
            PageRow.Gap,
            .. Wrapped.Of("On a page: arrows and PgUp, PgDn walk, Enter chooses, Esc goes back.", columns).Select(line => new PageRow(line)),
            .. Wrapped.Of("In a form: Enter sends, Tab goes to the next field, Esc gives up.", columns).Select(line => new PageRow(line)),
            .. Wrapped.Of("Never connect two supplies; work de-energised. No substitute for the code in force.", columns)
                .Select(line => new PageRow(line)),
        ];
    }
}
