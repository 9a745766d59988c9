using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>Breakers that have to stay side by side: those that share a neutral, and those whose handles are tied.</summary>
/// <remarks>
/// A shared neutral needs a leg for each hot (its definition, Article 100) and handles that open together (210.4(B)); that a tie
/// reaches the next row of a side, or the other half of a space, is common practice, no source.
/// </remarks>
internal static class Neighbours
{
    /// <summary>The number of each circuit's group by its ordinal, -1 for a breaker on its own.</summary>
    public static int[] Groups(Schedule schedule)
    {
        var circuits = schedule.Circuits;
        var group = Enumerable.Range(0, circuits.Length).ToArray();
        foreach (var one in circuits)
        {
            foreach (var other in circuits.Where(other => other.Ordinal > one.Ordinal && AreJoined(one, other)))
                Join(group, one.Ordinal, other.Ordinal);
        }
        return [.. group.Select(number => group.Count(other => other == number) > 1 ? number : -1)];
    }

    /// <summary>Whether breakers of a group may sit at these spaces, each in the order of the circuits.</summary>
    public static bool AreLawful(PanelSystem system, IReadOnlyList<Circuit> circuits, ReadOnlySpan<SpaceNumber> spaces)
    {
        SpaceNumber[] sorted = [.. spaces];
        Array.Sort(sorted);
        for (var index = 1; index < sorted.Length; index++)
            if (!HandleTie.Meet(sorted[index - 1], sorted[index])) return false;
        for (var one = 0; one < circuits.Count; one++)
        {
            for (var other = one + 1; other < circuits.Count; other++)
                if (ShareNeutral(circuits[one], circuits[other]) && system.LegOf(spaces[one]) == system.LegOf(spaces[other])) return false;
        }
        return true;
    }

    private static bool AreJoined(Circuit one, Circuit other) =>
        ShareNeutral(one, other)
        || (IsTiedAlone(one) && IsTiedAlone(other) && HandleTie.Meet(one.Space, other.Space));

    /// <summary>With a shared neutral the tie reaches those that share it, not another pair that happens to sit beside them.</summary>
    private static bool IsTiedAlone(Circuit circuit) => circuit is { Tied: true, Breaker.Poles: 1, Multiwire: null };

    private static bool ShareNeutral(Circuit one, Circuit other) =>
        one is { Multiwire: not null, IsSpare: false } && !other.IsSpare && one.Multiwire == other.Multiwire;

    private static void Join(int[] group, int one, int other)
    {
        var (kept, gone) = (group[one], group[other]);
        for (var index = 0; index < group.Length; index++)
            if (group[index] == gone) group[index] = kept;
    }
}
