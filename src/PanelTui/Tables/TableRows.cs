using System.Collections.Immutable;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.Tables;

/// <summary>The table as rows of text: a star before the marked ones, the columns that there is room for.</summary>
internal sealed class TableRows
{
    private const int Mark = 2;
    private const int LeastName = 14;
    private const int MostName = 32;
    private const int NameAt = 2;

    private readonly ImmutableArray<int> _widths;
    private readonly ColumnWindow _window;

    /// <param name="cursor">The column of the cursor.</param>
    /// <param name="first">The first column in sight of those that do not stay.</param>
    /// <param name="columns">How wide the table is.</param>
    public TableRows(int cursor, int first, int columns)
    {
        var name = Math.Clamp(columns * 3 / 10, LeastName, MostName);
        var kept = CircuitColumns.All.Take(CircuitColumns.Kept).Sum(column => column.Columns + 1) - CircuitColumns.All[NameAt].Columns + name;
        var most = Math.Max(LeastName, columns - Mark - kept - 1);
        _widths = [.. CircuitColumns.All.Select((column, at) => at == NameAt ? name : Math.Min(column.Columns, most))];
        _window = ColumnWindow.Of([.. _widths.Select(width => width + 1)], CircuitColumns.Kept, first, cursor, columns - Mark);
    }

    /// <summary>The first column in sight of those that do not stay.</summary>
    public int First => _window.First;

    /// <summary>The headings, that of the cursor's column strong.</summary>
    public ImmutableArray<TextRun> Header(int cursor) =>
    [
        new TextRun(new string(' ', Mark)),
        .. _window.InSight.SelectMany(at => Cell(at, CircuitColumns.All[at].Title, at == cursor ? Tone.Strong : Tone.Faint)),
    ];

    public ImmutableArray<TextRun> Row(CircuitRow row, bool isMarked) =>
    [
        new TextRun(isMarked ? "* " : "  ", Tone.Strong),
        .. _window.InSight.SelectMany(at => Cell(at, CircuitColumns.All[at].Text(row), ToneOf(row, CircuitColumns.All[at], isMarked))),
    ];

    /// <summary>Which of a row's runs is the cell of a column; nothing where it is out of sight.</summary>
    public int? RunOf(int column) => _window.InSight.ToList().IndexOf(column) is >= 0 and var at ? 1 + (2 * at) : null;

    /// <summary>The column that stands so far from the left; nothing beside them.</summary>
    public int? At(int x)
    {
        x -= Mark;
        foreach (var column in _window.InSight)
        {
            if (x >= 0 && x < _widths[column]) return column;
            x -= _widths[column] + 1;
        }

        return null;
    }

    private IEnumerable<TextRun> Cell(int at, string text, Tone tone)
    {
        var shown = DisplayText.Fit(text, _widths[at]);
        var clean = shown.TrimEnd();
        yield return new TextRun(CircuitColumns.All[at].IsRight ? new string(' ', shown.Length - clean.Length) + clean : shown, tone);
        yield return new TextRun(" ");
    }

    private static Tone ToneOf(CircuitRow row, CircuitColumn column, bool isMarked)
    {
        if (column.IsFindings && row.Findings.Any(finding => finding.Severity == Severity.Error)) return Tone.Error;
        if (column.IsFindings && row.Findings.Any(finding => finding.Severity == Severity.Warning)) return Tone.Warning;
        return isMarked ? Tone.Strong : row.Circuit.IsSpare ? Tone.Faint : Tone.Plain;
    }
}
