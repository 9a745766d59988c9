using System.Collections.Immutable;

namespace PanelTui.Tables;

/// <summary>Which columns of a table are in sight: the first ones always, then as many as there is room for, that of the cursor among them.</summary>
/// <param name="Kept">How many stay in sight.</param>
/// <param name="First">The first of the others that is in sight.</param>
/// <param name="Count">How many of the others are in sight.</param>
internal readonly record struct ColumnWindow(int Kept, int First, int Count)
{
    /// <summary>By number, from the left.</summary>
    public IEnumerable<int> InSight => Enumerable.Range(0, Kept).Concat(Enumerable.Range(First, Count));

    /// <param name="widths">Of all columns, each with the gap behind it.</param>
    /// <param name="kept">How many stay in sight, as far as there is room for the cursor's besides.</param>
    /// <param name="first">The first of the others that was in sight before.</param>
    /// <param name="cursor">The column of the cursor.</param>
    /// <param name="room">How wide the table is.</param>
    public static ColumnWindow Of(ImmutableArray<int> widths, int kept, int first, int cursor, int room)
    {
        var widest = cursor >= kept ? widths[cursor] : 0;
        while (kept > 1 && widths.Take(kept).Sum() + widest > room) kept--;
        room -= widths.Take(kept).Sum();
        first = Math.Max(kept, cursor >= kept ? Math.Min(first, cursor) : first);
        while (first < cursor && widths[first..(cursor + 1)].Sum() > room) first++;
        var count = 0;
        while (first + count < widths.Length && widths[first..(first + count + 1)].Sum() <= room) count++;
        return new ColumnWindow(kept, first, Math.Max(count, first == cursor ? 1 : 0));
    }
}
