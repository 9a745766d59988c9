using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Presentation;
using PanelTui.Tables;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>Pasted rows that do not all go in: each with what is in its way, to be mended here; nothing is in the schedule yet.</summary>
/// <param name="paste">The rows.</param>
/// <param name="read">Reads what is pasted in their place.</param>
internal sealed class PastePage(CircuitPaste paste, Func<string, (CircuitPaste? Paste, string? WhyNot)> read) : Page
{
    private const int WidestCell = 20;
    private const int NumberColumns = 4;

    private CircuitPaste _paste = paste;
    private int _cell;
    private int _left;
    private int _columns;
    private ((object, object) Of, ImmutableArray<PasteProblem> Problems)? _looked;

    public override ImmutableArray<EditorCommand> Commands =>
    [
        new PageCommand("Enter", "Mend the cell", (editor, _) => editor.ChooseRow(), Key.Enter, Key.E, Key.F2) { Word = "mend" },
        new PageCommand("←→", "To the next cell", (editor, _) => GoTo(editor, 1), Key.CursorRight, Key.Tab) { Word = "cells" },
        new PageCommand("←", "To the cell before", (editor, _) => GoTo(editor, -1), Key.CursorLeft, Key.Tab.WithShift),
        new PageCommand("t", "Take all rows, as one step of undo", (editor, _) => Take(editor), Key.T)
        {
            Needs = (editor, _) => Problems(editor.Session) is [var first, ..] ? _paste.Called(first) : null,
            Word = "take",
        },
        new PageCommand("Del", "Leave the row out", (editor, _) => LeaveOut(editor), Key.Delete, Key.D)
        {
            Needs = (_, _) => _paste.Rows.Length > 1 ? null : "It is the only row: Esc gives the paste up",
            Word = "leave out",
        },
    ];

    public override string Title(Session session)
    {
        var wrong = Problems(session).Select(problem => problem.Row).Distinct().Count();
        return $"Pasted: {_paste.Rows.Length} {(_paste.Rows.Length == 1 ? "row" : "rows")}, {(wrong == 0 ? "all can go in: t takes them" : $"{wrong} cannot go in yet")}";
    }

    public override ImmutableArray<PageRow> Pinned(Session session, int columns) =>
        [new PageRow([new TextRun(new string(' ', NumberColumns)), .. Cells(columns, at => _paste.Columns[at]?.Title ?? "?", Tone.Faint)])];

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        _columns = columns;
        var problems = Problems(session).ToLookup(problem => problem.Row);
        return [.. Enumerable.Range(0, _paste.Rows.Length).SelectMany(row => Lines(row, problems[row], columns))];
    }

    public override string Detail(Session session, int chosen)
    {
        if (session.Message.Length > 0) return session.Message;
        return Problems(session) is [var first, ..] ? $"Nothing is pasted yet: {_paste.Called(first)}" : "Nothing is pasted yet: t takes all rows as one step of undo; Esc gives them up.";
    }

    /// <summary>What is pasted now stands in the place of what was pasted before.</summary>
    public override string? Paste(IEditor editor, string text)
    {
        var (rows, whyNot) = read(text);
        if (rows is null) return whyNot;
        (_paste, _cell, Place) = (rows, 0, PagePlace.Start);
        if (Problems(editor.Session).IsEmpty) Take(editor);
        else editor.Session.Say("");
        return null;
    }

    /// <summary>The pasted row that is chosen, from 0; the lines below it tell of it too.</summary>
    private int Row(Session session) =>
        Math.Clamp(ChosenAmong(Rows(session, _columns)), 0, _paste.Rows.Length - 1);

    private ImmutableArray<PasteProblem> Problems(Session session)
    {
        var of = ((object)session.Now, (object)_paste);
        if (_looked is not { } looked || looked.Of != of) _looked = looked = (of, _paste.Into(session.Now).Problems);
        return looked.Problems;
    }

    private IEnumerable<PageRow> Lines(int row, IEnumerable<PasteProblem> problems, int columns)
    {
        var wrong = problems.ToList();
        var window = Window(columns);
        yield return new PageRow(
            [
                new TextRun($"{row + 1,3} "),
                .. Cells(columns, at => at < _paste.Rows[row].Length ? _paste.Rows[row][at] : "", Tone.Plain, wrong),
            ],
            editor => Mend(editor, row))
        {
            Cell = 1 + (2 * window.InSight.ToList().IndexOf(_cell)),
        };
        foreach (var line in wrong.SelectMany(problem => Wrapped.Of(DisplayText.Clean($"! {_paste.Called(problem)}"), columns - NumberColumns)))
            yield return new PageRow(new string(' ', NumberColumns) + line, Tone.Error);
    }

    private IEnumerable<TextRun> Cells(int columns, Func<int, string> text, Tone tone, List<PasteProblem>? wrong = null) => Window(columns).InSight.SelectMany(at => (TextRun[])
    [
        new TextRun(DisplayText.Fit(text(at), Widths[at] - 1), wrong?.Exists(problem => problem.Cell == at) == true ? Tone.Error : tone),
        new TextRun(" "),
    ]);

    private ColumnWindow Window(int columns)
    {
        var window = ColumnWindow.Of(Widths, 1, _left, _cell, columns - NumberColumns);
        _left = window.First;
        return window;
    }

    private ImmutableArray<int> Widths =>
    [
        .. Enumerable.Range(0, _paste.Columns.Length).Select(at => 1 + Math.Min(WidestCell, _paste.Rows
            .Where(row => at < row.Length).Select(row => DisplayText.Width(row[at])).Append(_paste.Columns[at]?.Title.Length ?? 1).Max())),
    ];

    private void GoTo(IEditor editor, int by)
    {
        _cell = Math.Clamp(_cell + by, 0, _paste.Columns.Length - 1);
        editor.Session.Say("");
    }

    private void Mend(IEditor editor, int row)
    {
        var cell = Math.Min(_cell, _paste.Rows[row].Length - 1);
        var label = $"Row {row + 1} {_paste.Columns[cell]?.Title ?? $"column {cell + 1}"}";
        editor.Open(new PasteCellForm(editor.Session, label, _paste.Columns[cell], _paste.Rows[row][cell], text => _paste = _paste.With(row, cell, text)));
    }

    private void LeaveOut(IEditor editor)
    {
        _paste = _paste.Without(Row(editor.Session));
        editor.Session.Say("");
    }

    private void Take(IEditor editor)
    {
        var session = editor.Session;
        if (session.Do(snapshot => _paste.Into(snapshot).Done!) is { } refusal)
        {
            session.Say($"! {refusal}");
            return;
        }

        var said = session.Message;
        editor.ClosePage();
        session.Say(said);
    }
}
