using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents.Intents;
using PanelTui.Presentation;
using PanelTui.Tables;

namespace PanelTui.Pages;

/// <summary>Every breaker as a row: values are typed into the cells, for one row or for all that are marked, and taken from a spreadsheet.</summary>
internal sealed class TablePage : Page
{
    /// <summary>A narrower window has the figures on a row of its own.</summary>
    private const int Wide = 74;

    private readonly CircuitTable _table = new();
    private readonly ImmutableArray<EditorCommand> _whileTyping;
    private readonly ImmutableArray<EditorCommand> _commands;
    private TableRows? _laid;
    private int _left;
    private bool _isTyping;
    private bool _isInCell;

    /// <param name="session">The open file.</param>
    /// <param name="circuit">The circuit to begin at, by its place in the file.</param>
    public TablePage(Session session, int? circuit)
    {
        Place = new PagePlace(0, Math.Max(0, Shown(session).ToList().FindIndex(row => row.Circuit.Ordinal == circuit)));
        _commands = TableCommands.Of(this);
        _whileTyping = TableCommands.WhileTyping(this);
    }

    public override ImmutableArray<EditorCommand> Commands => _isTyping ? _whileTyping : _commands;

    public override bool TakesText => _isTyping;

    /// <summary>The column of the cursor.</summary>
    public CircuitColumn Column => _table.Column;

    public override string Title(Session session)
    {
        var (shown, marked) = (Shown(session), _table.Marked(session));
        var all = session.Schedule.Circuits.Length;
        var with = Typed.Length > 0 || _isTyping ? $"{shown.Length} of {all} with: {Typed}{(_isTyping ? "_" : "")}" : $"{all}";
        var hidden = marked.Except(shown).Count();
        var marks = marked.IsEmpty ? "" : $"; {marked.Length} marked{(hidden > 0 ? $", {hidden} not shown" : "")}";
        return $"All breakers: {with}; {_table.SortedBy}{marks}";
    }

    public override ImmutableArray<PageRow> Pinned(Session session, int columns) =>
    [
        .. columns < Wide ? [] : new[] { new PageRow(SummaryRow.Of(session.Assessment, session.Preview?.Assessment, columns)) },
        new PageRow(Laid(columns).Header(_table.At)),
    ];

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var (laid, shown) = (Laid(columns), Shown(session));
        var marked = _table.Marks.In(session.Schedule);
        if (shown.IsEmpty) return [new PageRow(Typed.Length > 0 ? $"No breaker has {DisplayText.Clean(Typed)} in it." : "No breaker yet: paste rows of a spreadsheet here.")];
        var cell = laid.RunOf(_table.At);
        return
        [
            .. shown.Select((row, at) => new PageRow(
                laid.Row(_table.AsItWouldBe(session, row), marked.BinarySearch(row.Circuit.Ordinal) >= 0), editor => OpenFields(editor, at)) { Cell = cell }),
        ];
    }

    public override string Detail(Session session, int chosen)
    {
        if (session.Message.Length > 0 || Here(session) is not { } row) return session.Message;
        var text = Column.IsFindings ? string.Join(" ", row.Findings.Select(finding => finding.Message)) : Column.Text(row);
        var told = text.Length > 0 ? text : Column.Field is { } field ? $"not set. {field.Help}." : "none";
        return $"{row.Circuit.Space} {CircuitText.NameOf(row.Circuit)} · {Column.Title}: {told}";
    }

    /// <summary>Tab goes on in the next cell, Enter down a row, as after typing into a cell.</summary>
    public override void FormTaken(IEditor editor, bool goesOn)
    {
        if (!_isInCell) return;
        if (goesOn)
        {
            _table.GoTo(_table.At + 1);
            if (WhyNot(editor.Session) is null) Edit(editor);
            else editor.Session.Say("");
        }
        else
        {
            GoDown(editor);
        }
    }

    public override bool PointAt(int x)
    {
        if (_laid?.At(x) is not { } column || column == _table.At) return false;
        _table.GoTo(column);
        return true;
    }

    /// <summary>Rows that all go in are in at once, as one step of undo; others stay on a page to be mended.</summary>
    public override string? Paste(IEditor editor, string text)
    {
        var session = editor.Session;
        if (_isTyping)
        {
            Typed += text.Split('\n', '\r', '\t')[0];
            session.Say("");
            return null;
        }

        if (session.WhyNoEdit is { } look) return look;
        var (paste, whyNot) = Read(session, text);
        if (paste is null) return whyNot;
        var (done, problems) = paste.Into(session.Now);
        if (done is not null) RowEdits.Do(editor, _ => done);
        else editor.Open(new PastePage(paste, other => Read(session, other)));
        if (done is null) session.Say($"Nothing is pasted yet: {paste.Called(problems[0])}");
        return null;
    }

    /// <summary>The row of the cursor; nothing where none is shown.</summary>
    public CircuitRow? Here(Session session) => Shown(session) is var shown && Place.Chosen >= 0 && Place.Chosen < shown.Length ? shown[Place.Chosen] : null;

    public ImmutableArray<CircuitRow> Marked(Session session) => _table.Marked(session);

    /// <summary>Why nothing can be typed into the cell of the cursor; nothing where it can.</summary>
    public string? WhyNot(Session session) => Here(session) is { } row ? Column.WhyNot(row) : "No breaker is shown";

    /// <summary>The marked rows, else that of the cursor.</summary>
    public ImmutableArray<CircuitRow> Meant(Session session) =>
        Marked(session) is { IsEmpty: false } marked ? marked : Here(session) is { } row ? [row] : [];

    public void Edit(IEditor editor, string? begun = null)
    {
        _isInCell = true;
        editor.Open(new ColumnForm(editor.Session, Column, [Here(editor.Session)!], begun));
    }

    public void SetMeant(IEditor editor)
    {
        _isInCell = false;
        editor.Open(new ColumnForm(editor.Session, Column, Meant(editor.Session)));
    }

    /// <summary>The value of the row above; the cursor goes on, so that the key held fills down.</summary>
    public void AsAbove(IEditor editor)
    {
        RowEdits.Set(editor, Column, [Here(editor.Session)!], Shown(editor.Session)[Place.Chosen - 1]);
        GoDown(editor);
    }

    public void Turn(IEditor editor, int by)
    {
        _table.GoTo(_table.At + by);
        editor.Session.Say("");
    }

    public void Mark(IEditor editor)
    {
        _table.Marks.Turn(editor.Session.Schedule, Here(editor.Session)!.Circuit.Ordinal);
        editor.WalkPage(1);
    }

    public void MarkAll(IEditor editor)
    {
        _table.Marks.Add(editor.Session.Schedule, Shown(editor.Session).Select(row => row.Circuit.Ordinal));
        editor.Session.Say("");
    }

    public void ClearMarks(IEditor editor)
    {
        _table.Marks.Clear();
        editor.Session.Say("");
    }

    public void Sort(IEditor editor)
    {
        var here = Here(editor.Session)?.Circuit.Ordinal;
        _table.Sort();
        GoTo(editor.Session, here);
        editor.Session.Say("");
    }

    /// <summary>Whether letters narrow the rows down from now on.</summary>
    public void TakeLetters(IEditor editor, bool isTyping)
    {
        _isTyping = isTyping;
        editor.Session.Say("");
    }

    public void ShowAll(IEditor editor)
    {
        var here = Here(editor.Session)?.Circuit.Ordinal;
        (Typed, _isTyping) = ("", false);
        GoTo(editor.Session, here);
        editor.Session.Say("");
    }

    private ImmutableArray<CircuitRow> Shown(Session session) => _table.Shown(session, Typed);

    private TableRows Laid(int columns)
    {
        _laid = new TableRows(_table.At, _left, columns);
        _left = _laid.First;
        return _laid;
    }

    /// <summary>The cursor on a circuit wherever its row is now, the page no further down than that row.</summary>
    private void GoTo(Session session, int? circuit)
    {
        var row = Math.Max(0, Shown(session).ToList().FindIndex(row => row.Circuit.Ordinal == circuit));
        Place = new PagePlace(row, row);
    }

    /// <summary>Down a row, with what there was to say still in sight.</summary>
    private static void GoDown(IEditor editor)
    {
        var said = editor.Session.Message;
        editor.WalkPage(1);
        editor.Session.Say(said);
    }

    private (CircuitPaste? Paste, string? WhyNot) Read(Session session, string text) => CircuitPaste.Of(
        text, _table.At, [.. Shown(session).Skip(Math.Max(0, Place.Chosen)).Select(row => row.Circuit.Ordinal)]);

    private void OpenFields(IEditor editor, int at) => editor.Open(new FieldsPage(
        [.. Shown(editor.Session).Select(row => Places.Circuit(row.Circuit.Ordinal))], at, EntriesPages.CircuitTitle));
}
