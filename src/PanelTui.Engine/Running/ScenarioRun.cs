using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running;

/// <summary>A scenario on the standby source: what runs, and what each leg carries of what it may.</summary>
public sealed record ScenarioRun
{
    public required Scenario Scenario { get; init; }

    public required ImmutableArray<Circuit> Circuits { get; init; }

    /// <summary>The loads that run: of a group only the largest.</summary>
    public required ImmutableArray<PlacedLoad> Loads { get; init; }

    public required PerLeg<LegRun> Legs { get; init; }

    public required Amperes Neutral { get; init; }

    /// <summary>What the source may give in all; nothing where none is stated.</summary>
    public Watts? Limit { get; init; }

    public string Name => Scenario.Name;

    public Watts Running => Legs.Values.Aggregate(Watts.Zero, (sum, leg) => sum + leg.Running);

    /// <summary>Whether every leg, and all of them together, stay within what the source may give.</summary>
    /// <remarks>Nothing where no limit is stated.</remarks>
    public bool? Ok
    {
        get
        {
            if (Legs[Leg.A].Limit is null && Limit is null)
                return null;
            return Legs.Values.All(leg => leg.Ok ?? true) && (Limit is not { } limit || Running <= limit);
        }
    }

    public static ScenarioRun Of(Scenario scenario, Schedule schedule, ImmutableArray<PlacedLoad> all)
    {
        var runs = ScenarioLoads.Of(scenario, schedule, all);
        var system = schedule.Panel.System;
        var limit = SourceLimit.Of(schedule.Source, system);
        var legs = LegSum.Of(system, runs.Loads.Select(load => load.RunningLegs));
        return new ScenarioRun
        {
            Scenario = scenario,
            Circuits = runs.Circuits,
            Loads = runs.Loads,
            Legs = PerLeg.Of(system, leg => new LegRun(WattsOn(leg, runs.Loads), limit.PerLeg, legs.AmperesOn(leg))),
            Neutral = legs.Neutral(schedule.Source?.Arrangement ?? SourceArrangement.OneUnit),
            Limit = limit.InAll,
        };
    }

    private static Watts WattsOn(Leg leg, ImmutableArray<PlacedLoad> loads) => loads.Aggregate(
        Watts.Zero, (sum, load) => sum + load.Placement.WattsOn(leg, load.RunningWatts));
}
