using System.Collections.Immutable;
using PanelTui.Engine;

namespace PanelTui.Sheets.Layout;

/// <summary>Sets a table, its head again on every page it goes on to; no row is torn over two pages.</summary>
internal sealed class TableLayout
{
    private const double Gap = 6;
    private readonly PageFlow _flow;
    private readonly Table _table;
    private readonly double _size;
    private readonly ImmutableArray<double> _widths;

    public TableLayout(PageFlow flow, Table table, double size)
    {
        (_flow, _table, _size) = (flow, table, size);
        var room = flow.Width - (Gap * table.Columns.Length);
        double[] wanted = [.. table.Columns.Select((_, at) => Wanted(at))];
        var widths = ColumnWidths.Fit(wanted, [.. table.Columns.Select(column => column.Wraps)], room);
        _widths = Spread(widths, room);
    }

    public void Set()
    {
        Head();
        foreach (var row in _table.Rows)
        {
            var lines = row.Select((cell, at) => Typeface.Wrap(cell.Text, _widths[at], _size).ToList()).ToList();
            if (_flow.Need(Height(lines))) Head();
            Row(lines, bold: false);
        }
    }

    /// <summary>The room that is left over goes to the columns that wrap, so that the table fills the width.</summary>
    private ImmutableArray<double> Spread(ImmutableArray<double> widths, double room)
    {
        var wrapping = _table.Columns.Count(column => column.Wraps);
        var more = wrapping == 0 ? 0 : Math.Max(0, room - widths.Sum()) / wrapping;
        return [.. widths.Select((width, at) => _table.Columns[at].Wraps ? width + more : width)];
    }

    private double Wanted(int at) => _table.Rows
        .Select(row => Typeface.Width(Typeface.Settable(row[at].Text), _size))
        .Append(Typeface.Width(_table.Columns[at].Title, _size, bold: true)).Max() + 0.5;

    private void Head()
    {
        var lines = _table.Columns.Select((column, at) => Typeface.Wrap(column.Title, _widths[at], _size, bold: true).ToList()).ToList();
        _flow.Need(Height(lines) * 2);
        Row(lines, bold: true);
    }

    private double Height(List<List<string>> lines) => (lines.Max(cell => cell.Count) * _size * 1.2) + (_size * 0.35);

    private void Row(List<List<string>> cells, bool bold)
    {
        var left = _flow.Left + (Gap / 2);
        for (var at = 0; at < cells.Count; at++)
        {
            Cell(cells[at], left, at, bold);
            left += _widths[at] + Gap;
        }

        var height = Height(cells);
        var under = _flow.Top + height - 0.4;
        _flow.Add(new Mark.Stroke([new(_flow.Left, under), new(_flow.Left + _flow.Width, under)], bold ? 1 : 0.25));
        _flow.Skip(height);
    }

    private void Cell(List<string> lines, double left, int at, bool bold)
    {
        var align = _table.Columns[at].Align;
        var x = align switch
        {
            Align.Right => left + _widths[at],
            Align.Middle => left + (_widths[at] / 2),
            Align.Left => left,
            _ => throw Unnamed.Of(align),
        };
        for (var line = 0; line < lines.Count; line++)
        {
            if (lines[line].Length == 0) continue;
            _flow.Add(new Mark.Letters(new(x, _flow.Top + (_size * (1 + (line * 1.2)))), lines[line], _size, bold, align));
        }
    }
}
