using System.Collections.Immutable;

namespace PanelTui.Documents.Merging;

/// <summary>In which order merged entries stand.</summary>
internal static class ItemOrder
{
    /// <summary>The first order, with what only the second has put after what it follows there.</summary>
    public static ImmutableArray<T> WithAdded<T>(ImmutableArray<T> first, ImmutableArray<T> second)
        where T : notnull
    {
        var order = first.ToList();
        for (var index = 0; index < second.Length; index++)
        {
            if (order.Contains(second[index])) continue;
            var at = index == 0 ? 0 : order.IndexOf(second[index - 1]) + 1;
            order.Insert(at, second[index]);
        }

        return [.. order];
    }

    /// <summary>The order of the side that moved something; ours where both did.</summary>
    public static ImmutableArray<T> Merged<T>(ImmutableArray<T> ancestor, ImmutableArray<T> ours, ImmutableArray<T> theirs)
        where T : notnull
    {
        var kept = ours.Intersect(theirs).Intersect(ancestor).ToHashSet();
        var oursMoved = !ancestor.Where(kept.Contains).SequenceEqual(ours.Where(kept.Contains));
        var theirsMoved = !ancestor.Where(kept.Contains).SequenceEqual(theirs.Where(kept.Contains));
        return theirsMoved && !oursMoved ? WithAdded(theirs, ours) : WithAdded(ours, theirs);
    }
}
