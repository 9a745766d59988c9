using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Engine;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>Every command with its key, in two columns: those of the page it was opened from, those of the face, then how things are done.</summary>
/// <param name="from">The page it was opened from; nothing on the face.</param>
internal sealed class KeysPage(Page? from = null) : Page
{
    private const EditorMode OnTheFace = EditorMode.Face | EditorMode.Hand;

    private const int TaskColumns = 22;
    private const int KeyColumns = 6;

    private readonly ImmutableArray<EditorCommand> _ofPage =
        from is null ? [] : [.. from.Commands.Concat(PageCommand.All).DistinctBy(command => command.KeyName)];

    private int _at;

    private enum Told
    {
        Page,
        Face,
        Guide,
    }

    public override bool CanTurn => true;

    public override string Title(Session session) => At switch
    {
        Told.Page => $"Keys here, on: {from!.Title(session)}",
        Told.Face => "Keys on the face of the panel",
        Told.Guide => "How to",
        _ => throw Unnamed.Of(At),
    };

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : $"Never connect two supplies; work de-energised. No substitute for the code in force. ← → turns to {WordsOf(Kinds[(_at + 1) % Kinds.Length])}.";

    public override void Turn(Session session, int by)
    {
        _at = (_at + by + Kinds.Length) % Kinds.Length;
        Place = PagePlace.Start;
        session.Say("");
    }

    private Told At => Kinds[_at];

    private ImmutableArray<Told> Kinds => _ofPage.IsEmpty ? [Told.Face, Told.Guide] : [Told.Page, Told.Face, Told.Guide];

    private string WordsOf(Told told) => told switch
    {
        Told.Page => "the keys of the page",
        Told.Face => _ofPage.IsEmpty ? "the keys" : "the keys of the face",
        Told.Guide => "how things are done",
        _ => throw Unnamed.Of(told),
    };

    private static IEnumerable<PageRow> GuideRows(int columns) => Guide.Tasks.SelectMany(task => Wrapped
        .Of(task.How.Replace("`", "", StringComparison.Ordinal), columns - TaskColumns)
        .Select((line, at) => new PageRow([new TextRun(DisplayText.Fit(at == 0 ? task.Task : "", TaskColumns), Tone.Strong), new TextRun(line)])));

    public override ImmutableArray<PageRow> Rows(Session session, int columns) => At switch
    {
        Told.Page => [.. _ofPage.SelectMany(command => KeyRows(command, columns))],
        Told.Face => FaceRows(columns),
        Told.Guide => [.. GuideRows(columns)],
        _ => throw Unnamed.Of(At),
    };

    private static IEnumerable<PageRow> KeyRows(EditorCommand command, int columns) => Wrapped
        .Of(command.Title, columns - KeyColumns - 1)
        .Select((line, at) => new PageRow([new TextRun(DisplayText.Fit(at == 0 ? command.KeyName : "", KeyColumns + 1), Tone.Strong), new TextRun(line)]));

    private static ImmutableArray<PageRow> FaceRows(int columns)
    {
        var half = columns / 2;
        var entries = CommandBook.All
            .Where(command => (command.Modes & OnTheFace) != 0)
            .Select(command => DisplayText.Fit($"{DisplayText.Fit(command.KeyName, KeyColumns)} {command.Title}", half - 1)).ToList();
        var rows = (entries.Count + 1) / 2;
        return
        [
            .. Enumerable.Range(0, rows).Select(row => new PageRow(
                $"{entries[row]} {(row + rows < entries.Count ? entries[row + rows] : "")}")),
            PageRow.Gap,
            .. Wrapped.Of("On a page: arrows and PgUp, PgDn walk, Enter chooses, Esc goes back.", columns).Select(line => new PageRow(line)),
            .. Wrapped.Of("In a form: Enter sends, ↓ chooses, Tab completes or goes on, Esc gives up; ^U, ^K, ^W take away what is before, what is after, a word.", columns)
                .Select(line => new PageRow(line)),
        ];
    }
}
