using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>Every command with its key, in two columns.</summary>
internal sealed class KeysPage : Page
{
    private const EditorMode OnTheFace = EditorMode.Face | EditorMode.Hand;

    private const int TaskColumns = 22;

    private bool _guide;

    public override bool CanTurn => true;

    public override string Title(Session session) => _guide ? "How to" : "Keys on the face of the panel";

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : $"Never connect two supplies; work de-energised. No substitute for the code in force. ← → turns to {(_guide ? "the keys" : "how things are done")}.";

    public override void Turn(Session session, int by)
    {
        _guide = !_guide;
        Place = PagePlace.Start;
        session.Say("");
    }

    private static IEnumerable<PageRow> GuideRows(int columns) => Guide.Tasks.SelectMany(task => Wrapped
        .Of(task.How.Replace("`", "", StringComparison.Ordinal), columns - TaskColumns)
        .Select((line, at) => new PageRow([new TextRun(DisplayText.Fit(at == 0 ? task.Task : "", TaskColumns), Tone.Strong), new TextRun(line)])));

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        if (_guide) return [.. GuideRows(columns)];
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
            .. Wrapped.Of("In a form: Enter sends, ↓ chooses, Tab completes or goes on, Esc gives up.", columns).Select(line => new PageRow(line)),
        ];
    }
}
