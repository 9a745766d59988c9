using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Loads;

/// <summary>Which breakers a handle tie can join, those that sit one below the other or share a space, and which it moves together.</summary>
/// <remarks>Common practice, no source: a tie is a pin or a clip over two handles side by side.</remarks>
public static class HandleTie
{
    private const int NextRow = 2;

    public static bool Reaches(Circuit one, Circuit other) =>
        one.Spaces.Any(space => other.Spaces.Any(below => Meet(space, below)));

    /// <summary>The circuits that are switched with this one, itself first; one alone where no tie is written down.</summary>
    /// <remarks>With a shared neutral a tie on any of the name joins them all; without, it joins tied neighbours.</remarks>
    public static ImmutableArray<Circuit> Moves(Circuit circuit, ImmutableArray<Circuit> all)
    {
        if (circuit.Multiwire is { } name)
        {
            var sharing = all.Where(other => !other.IsSpare && other.Multiwire == name).ToList();
            return sharing.Any(other => other.Tied) ? [circuit, .. sharing.Where(other => other.Ordinal != circuit.Ordinal)] : [circuit];
        }

        if (!IsTiedAlone(circuit)) return [circuit];
        List<Circuit> joined = [circuit];
        for (var at = 0; at < joined.Count; at++)
            joined.AddRange(all.Where(other => IsTiedAlone(other) && Reaches(joined[at], other) && joined.TrueForAll(one => one.Ordinal != other.Ordinal)));
        return [.. joined];
    }

    private static bool IsTiedAlone(Circuit circuit) => circuit is { Tied: true, Breaker.Poles: 1, Multiwire: null, IsSpare: false };

    /// <summary>Whether two spaces are one below the other on a side, or the halves of one.</summary>
    public static bool Meet(SpaceNumber one, SpaceNumber other) =>
        Math.Abs((long)one.Number - other.Number) is 0 or NextRow && !one.Overlaps(other);
}
