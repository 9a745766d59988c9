using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>Loads of one group never run together, so only the largest of each group counts.</summary>
public static class Noncoincident
{
    public static readonly CodeSection Section = Nec.Section("220.60");

    /// <summary>Without the smaller loads of each group; the largest is the one with most VA on its worst leg.</summary>
    /// <remarks>Of equals the first in the file counts, so that two people get one figure.</remarks>
    /// <param name="loads">Everything that is on.</param>
    /// <param name="starting">The id of a circuit that runs in any case: its loads come before larger ones of their group.</param>
    public static ImmutableArray<PlacedLoad> Largest(ImmutableArray<PlacedLoad> loads, string? starting = null)
    {
        if (loads.All(load => load.Load.Group is null))
            return loads;
        var largest = loads.Where(load => load.Load.Group is not null)
            .GroupBy(load => load.Load.Group, StringComparer.Ordinal)
            .Select(group => group.MaxBy(load => (Starts(load, starting), OnWorstLeg(load).Value))!)
            .ToHashSet(ReferenceEqualityComparer.Instance);
        return [.. loads.Where(load => load.Load.Group is null || largest.Contains(load))];
    }

    /// <summary>The loads that a larger one of their group stands for.</summary>
    public static ImmutableArray<PlacedLoad> LeftOut(ImmutableArray<PlacedLoad> loads, string? starting = null)
    {
        var counted = Largest(loads, starting).ToHashSet(ReferenceEqualityComparer.Instance);
        return [.. loads.Where(load => !counted.Contains(load))];
    }

    private static bool Starts(PlacedLoad load, string? starting) => starting is not null && load.Circuit.Id == starting;

    private static VoltAmperes OnWorstLeg(PlacedLoad load) => load.Placement.Legs.Max(load.Legs.VoltAmperesOn);
}
