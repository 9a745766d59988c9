using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running;

/// <summary>One leg without voltage: its loads stand still, and so do those between it and the other.</summary>
public sealed record DarkLeg(Leg Leg, ImmutableArray<Circuit> Dark, ImmutableArray<Circuit> Between)
{
    public static DarkLeg Of(Leg leg, ScenarioRun run) => new(
        leg,
        Circuits(run.Loads.Where(load => load.Placement.IsToNeutral && load.Placement.Legs[0] == leg)),
        Circuits(run.Loads.Where(load => !load.Placement.IsToNeutral)));

    private static ImmutableArray<Circuit> Circuits(IEnumerable<PlacedLoad> loads) =>
        [.. loads.Select(load => load.Circuit).DistinctBy(circuit => circuit.Ordinal)];
}
