using System.Collections.Immutable;

namespace PanelTui.Documents.Merging;

/// <summary>In which order merged entries stand.</summary>
internal static class ItemOrder
{
    /// <summary>The first order, with what only the second has put after what it follows there.</summary>
    public static ImmutableArray<T> WithAdded<T>(ImmutableArray<T> first, ImmutableArray<T> second)
        where T : notnull
    {
        var order = new LinkedList<T>(first);
        var places = new Dictionary<T, LinkedListNode<T>>();
        for (var at = order.First; at is not null; at = at.Next) places.TryAdd(at.Value, at);
        for (var index = 0; index < second.Length; index++)
        {
            if (places.ContainsKey(second[index])) continue;
            places[second[index]] = index == 0 ? order.AddFirst(second[index]) : order.AddAfter(places[second[index - 1]], second[index]);
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
