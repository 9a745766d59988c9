using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Pages;

namespace PanelTui.Tables;

/// <summary>The circuits as rows in an order of the reader's own, narrowed down and marked; nothing of it is written.</summary>
/// <remarks>Rows keep their places while values are changed, so that none jumps away under the hand; sorting again puts them in order.</remarks>
internal sealed class CircuitTable
{
    private ImmutableArray<int> _order = [];
    private (string Typed, int Sort, bool LastFirst, int Circuits) _ordered = ("", -1, false, -1);
    private (Snapshot? Of, ImmutableArray<CircuitRow> Rows) _all = (null, []);
    private (Snapshot? Of, ImmutableArray<CircuitRow> Rows) _preview = (null, []);
    private int _sort;
    private bool _lastFirst;

    public RowMarks Marks { get; } = new();

    /// <summary>The column of the cursor, by number.</summary>
    public int At { get; private set; }

    public CircuitColumn Column => CircuitColumns.All[At];

    /// <summary>`by breaker`, or `by breaker, last first`.</summary>
    public string SortedBy => $"by {CircuitColumns.All[_sort].Title.ToLowerInvariant()}{(_lastFirst ? ", last first" : "")}";

    public void GoTo(int column) => At = Math.Clamp(column, 0, CircuitColumns.All.Length - 1);

    /// <summary>By the column of the cursor; once more turns the order around.</summary>
    public void Sort()
    {
        (_sort, _lastFirst) = (At, _sort == At && !_lastFirst);
        _ordered = ("", -1, false, -1);
    }

    /// <summary>The rows that have what was typed, in order.</summary>
    public ImmutableArray<CircuitRow> Shown(Session session, string typed)
    {
        var all = All(session);
        var wanted = (typed, _sort, _lastFirst, all.Length);
        if (_ordered != wanted) (_ordered, _order) = (wanted, [.. Ordered(Match.Of(all, TextOf, typed)).Select(row => row.Circuit.Ordinal)]);
        return [.. _order.Select(ordinal => all[ordinal])];
    }

    /// <summary>The row as it would be if the open form were sent.</summary>
    public CircuitRow AsItWouldBe(Session session, CircuitRow row)
    {
        if (session.Preview is not { Assessment: not null } preview) return row;
        if (_preview.Of != preview) _preview = (preview, CircuitRow.AllOf(preview));
        return _preview.Rows.Length == _all.Rows.Length ? _preview.Rows[row.Circuit.Ordinal] : row;
    }

    /// <summary>The marked rows in the order of the file, in sight or not.</summary>
    public ImmutableArray<CircuitRow> Marked(Session session)
    {
        var all = All(session);
        return [.. Marks.In(session.Schedule).Select(ordinal => all[ordinal])];
    }

    private ImmutableArray<CircuitRow> All(Session session)
    {
        if (_all.Of != session.Now) _all = (session.Now, CircuitRow.AllOf(session.Now));
        return _all.Rows;
    }

    private IEnumerable<CircuitRow> Ordered(IEnumerable<CircuitRow> rows)
    {
        var column = CircuitColumns.All[_sort];
        var keyed = rows.Select(row => (Row: row, Number: column.Number?.Invoke(row), Text: column.Text(row))).ToList();
        var filled = column.Number is null ? keyed.Where(one => one.Text.Length > 0) : keyed.Where(one => one.Number is not null);
        var sorted = filled.OrderBy(one => one.Number).ThenBy(one => one.Text, StringComparer.OrdinalIgnoreCase).ThenBy(one => one.Row.Circuit.Space).ToList();
        if (_lastFirst) sorted.Reverse();
        return sorted.Concat(keyed.Except(sorted).OrderBy(one => one.Row.Circuit.Space)).Select(one => one.Row);
    }

    private static string TextOf(CircuitRow row) => string.Join(' ', CircuitColumns.All.Select(column => column.Text(row)));
}
