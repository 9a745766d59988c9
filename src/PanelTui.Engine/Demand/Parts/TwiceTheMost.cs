using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>So many household appliances of one size.</summary>
internal readonly record struct ApplianceUnits(VoltAmperes Each, long Count)
{
    public VoltAmperes Total => Each * Count;

    public static ImmutableArray<ApplianceUnits> Of(IEnumerable<PlacedLoad> loads) =>
        [.. loads.Select(load => new ApplianceUnits(load.Size.Each, Math.Max(0, load.Load.Count)))];
}

/// <summary>Single-phase household appliances on three legs: counted as twice the most between any two legs.</summary>
/// <remarks>Half of what they come to falls on each leg, 220.54 and 220.55.</remarks>
internal static class TwiceTheMost
{
    /// <summary>Two or more appliances from line to line on a panel of three legs.</summary>
    public static bool AppliesTo(PanelSystem system, ImmutableArray<PlacedLoad> loads) =>
        system.Legs.Length == 3 && loads.Sum(load => (long)load.Load.Count) > 1;

    public static bool IsBetweenTwo(PlacedLoad load) => load.Placement.Legs.Length == 2;

    /// <summary>The appliances between two legs, doubled, that come to most.</summary>
    public static ImmutableArray<ApplianceUnits> Units(
        ImmutableArray<PlacedLoad> loads, Func<ImmutableArray<ApplianceUnits>, VoltAmperes> demand) => loads
        .GroupBy(load => (int)load.Placement.Legs[0] + (int)load.Placement.Legs[1])
        .Select(pair => ApplianceUnits.Of(pair).Select(unit => unit with { Count = 2 * unit.Count }).ToImmutableArray())
        .MaxBy(demand);

    /// <summary>As a balanced load: half of the figure on each of the three legs.</summary>
    public static LegLoads Balanced(PanelSystem system, VoltAmperes figure) =>
        LegLoads.None(system) with { ThreePhase = figure / 2 * 3 };
}
