using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Endurance;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Engine.Running;

/// <summary>A scenario on the standby source: what runs, and what each leg carries of what it may.</summary>
public sealed record ScenarioRun
{
    public required Scenario Scenario { get; init; }

    public required ImmutableArray<Circuit> Circuits { get; init; }

    /// <summary>The loads that run: of a group only the largest, and none that the source leaves without a voltage.</summary>
    public required ImmutableArray<PlacedLoad> Loads { get; init; }

    /// <summary>What could run of these circuits, before of a group the largest is taken: with that one off, another runs.</summary>
    internal ImmutableArray<PlacedLoad> Members { get; init; }

    /// <summary>Loads between the legs, where the source's legs are in phase: there is no voltage for them.</summary>
    public required ImmutableArray<PlacedLoad> Dead { get; init; }

    public required PerLeg<LegRun> Legs { get; init; }

    public required Amperes Neutral { get; init; }

    /// <summary>What the source may give in all; nothing where none is stated.</summary>
    public Watts? Limit { get; init; }

    /// <summary>Every limit that is stated, leg by leg.</summary>
    public required ImmutableArray<SourceBound> Bounds { get; init; }

    /// <summary>What each motor-like load asks when it starts last; the one that asks most of the source first.</summary>
    public required StartTable Starts { get; init; }

    /// <summary>What runs, times the share of the time that it is on.</summary>
    public required Watts Average { get; init; }

    /// <summary>The same on each leg.</summary>
    public required PerLeg<Watts> AverageOn { get; init; }

    /// <summary>From full to the reserve with nothing that charges; nothing without a battery, or with nothing to run.</summary>
    public Hours? ToReserve { get; init; }

    public string Name => Scenario.Name;

    /// <summary>The limit that is nearest, or passed furthest; nothing where none is stated.</summary>
    public SourceBound? Binding => BindingOf(Bounds);

    /// <summary>Loads to neutral that ask for more than one unit of two gives: no balancing helps them.</summary>
    public IEnumerable<PlacedLoad> LargerThanOneUnit => Legs[Leg.A].Limit is { } limit
        ? Loads.Where(load => load.Placement.IsToNeutral && load.RunningWatts > limit)
        : [];

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

    /// <summary>The same with one circuit switched off.</summary>
    public ScenarioRun Without(Circuit circuit, Schedule schedule) => Without([circuit], schedule);

    /// <summary>The same with some circuits switched off.</summary>
    public ScenarioRun Without(IReadOnlyCollection<Circuit> circuits, Schedule schedule)
    {
        var off = circuits.Select(circuit => circuit.Ordinal).ToHashSet();
        return Of(
            Scenario,
            schedule,
            [.. Circuits.Where(one => !off.Contains(one.Ordinal))],
            [.. Members.Where(load => !off.Contains(load.Circuit.Ordinal))]) with { Dead = Dead };
    }

    public static ScenarioRun OfAll(Schedule schedule, ImmutableArray<PlacedLoad> all) => Of(Scenario.AllOnStandby, schedule, all);

    public static ScenarioRun Of(Scenario scenario, Schedule schedule, ImmutableArray<PlacedLoad> all)
    {
        var runs = ScenarioLoads.Of(scenario, schedule, all);
        return OnSource(scenario, schedule, runs.Circuits, runs.Members);
    }

    /// <summary>A scenario whose circuits are chosen by hand, whatever it names.</summary>
    public static ScenarioRun OfCircuits(
        Scenario scenario, ImmutableArray<Circuit> circuits, Schedule schedule, ImmutableArray<PlacedLoad> all) =>
        OnSource(scenario, schedule, circuits, ScenarioLoads.OfCircuits(scenario, circuits, all).Members);

    /// <summary>The same circuits and loads on the source of another schedule.</summary>
    internal ScenarioRun On(Schedule schedule) => OnSource(Scenario, schedule, Circuits, [.. Members, .. Dead]);

    private static ScenarioRun OnSource(
        Scenario scenario, Schedule schedule, ImmutableArray<Circuit> circuits, ImmutableArray<PlacedLoad> loads)
    {
        var inPhase = schedule.Source?.Arrangement == SourceArrangement.InPhase && schedule.Panel.System.Legs.Length > 1;
        var byVoltage = loads.ToLookup(load => inPhase && !load.Placement.IsToNeutral);
        return Of(scenario, schedule, circuits, [.. byVoltage[false]]) with { Dead = [.. byVoltage[true]] };
    }

    private static ScenarioRun Of(
        Scenario scenario, Schedule schedule, ImmutableArray<Circuit> circuits, ImmutableArray<PlacedLoad> members)
    {
        var loads = Noncoincident.Largest(members, scenario.Starting);
        var system = schedule.Panel.System;
        var limit = SourceLimit.Of(schedule.Source, system);
        var sum = LegSum.Of(system, loads.Select(load => load.RunningLegs));
        var legs = LegsOf(sum, loads, limit);
        var average = AverageLoad.Of(loads);
        return new ScenarioRun
        {
            Scenario = scenario,
            Circuits = circuits,
            Loads = loads,
            Members = members,
            Dead = [],
            Legs = legs,
            Neutral = sum.Neutral(schedule.Source?.Arrangement ?? SourceArrangement.OneUnit),
            Limit = limit.InAll,
            Bounds = SourceBounds.Of(schedule.Source, limit, legs),
            Starts = StartTable.Of(loads, sum, schedule.Source, schedule.Code.Edition),
            Average = average,
            AverageOn = AverageLoad.OnLegs(loads, system),
            ToReserve = schedule.Source?.Battery?.HoursToReserve(Percent.Whole, average),
        };
    }

    /// <summary>The limits alone of some loads: what shedding looks at after each circuit.</summary>
    internal static ImmutableArray<SourceBound> BoundsOf(ImmutableArray<PlacedLoad> loads, Schedule schedule)
    {
        var limit = SourceLimit.Of(schedule.Source, schedule.Panel.System);
        var sum = LegSum.Of(schedule.Panel.System, loads.Select(load => load.RunningLegs));
        return SourceBounds.Of(schedule.Source, limit, LegsOf(sum, loads, limit));
    }

    /// <summary>The limit that is nearest, or passed furthest; nothing where none is stated.</summary>
    internal static SourceBound? BindingOf(ImmutableArray<SourceBound> bounds) =>
        bounds.Where(bound => bound.IsHard).MaxBy(bound => bound.Share);

    private static PerLeg<LegRun> LegsOf(LegLoads sum, ImmutableArray<PlacedLoad> loads, SourceLimit limit) =>
        PerLeg.Of(sum.System, leg => new LegRun(WattsOn(leg, loads), limit.PerLeg, sum.AmperesOn(leg)));

    private static Watts WattsOn(Leg leg, ImmutableArray<PlacedLoad> loads) => loads.Aggregate(
        Watts.Zero, (sum, load) => sum + load.Placement.WattsOn(leg, load.RunningWatts));
}
