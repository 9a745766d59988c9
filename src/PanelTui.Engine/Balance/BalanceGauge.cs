using System.Collections.Immutable;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Balance;

/// <summary>What the legs carry by the figure that is balanced: one row of legs, or one for each scenario.</summary>
public static class BalanceGauge
{
    /// <summary>VA or watts, a row for each scenario in the order of the file; empty where the figure cannot be worked out.</summary>
    public static ImmutableArray<ImmutableArray<decimal>> Rows(Schedule schedule, BalanceBy by) => by is BalanceBy.ByDemand
        ? DemandRows(schedule)
        : [.. Counted(schedule, by).Select(loads => RowOf(schedule.Panel.System, loads, by))];

    /// <summary>The most uneven row's imbalance.</summary>
    public static Percent Of(Schedule schedule, BalanceBy by) => Of(Rows(schedule, by));

    public static Percent Of(ImmutableArray<ImmutableArray<decimal>> rows) =>
        rows.IsEmpty ? Percent.Zero : rows.Max(row => Imbalance.Of(row));

    /// <summary>Why the figure cannot be balanced in this schedule; nothing where it can.</summary>
    public static string? WhyNot(Schedule schedule, BalanceBy by) => by switch
    {
        BalanceBy.ByDemand when DemandRows(schedule).IsEmpty => "the demand method lacks a figure, so there is no demand to balance",
        BalanceBy.ByWorst when schedule.Scenarios.IsEmpty => "the schedule has no scenarios, so none of them can be balanced",
        BalanceBy.ByScenario named when schedule.Scenarios.All(one => one.Name != named.Name) =>
            $"the schedule has no scenario {named.Name}",
        _ => null,
    };

    /// <summary>What one circuit puts on each leg, a row for each scenario: turning it by a row turns its legs.</summary>
    /// <remarks>Not for demand, where a circuit's part depends on all the others.</remarks>
    internal static ImmutableArray<ImmutableArray<decimal>>[] Parts(Schedule schedule, BalanceBy by)
    {
        var scenes = Counted(schedule, by).ToList();
        var system = schedule.Panel.System;
        return
        [
            .. schedule.Circuits.Select(circuit => scenes
                .Select(loads => RowOf(system, loads.Where(load => load.Circuit.Ordinal == circuit.Ordinal), by))
                .ToImmutableArray()),
        ];
    }

    private static IEnumerable<ImmutableArray<PlacedLoad>> Counted(Schedule schedule, BalanceBy by)
    {
        var all = PlacedLoad.AllOf(schedule);
        return by switch
        {
            BalanceBy.ByScenario named => Running(schedule, all, scenario => scenario.Name == named.Name),
            BalanceBy.ByWorst => Running(schedule, all, _ => true),
            _ => [all],
        };
    }

    private static IEnumerable<ImmutableArray<PlacedLoad>> Running(
        Schedule schedule, ImmutableArray<PlacedLoad> all, Func<Scenario, bool> isMeant) => schedule.Scenarios
        .Where(isMeant)
        .Select(scenario => ScenarioLoads.Of(scenario, schedule, all).Loads);

    private static ImmutableArray<decimal> RowOf(PanelSystem system, IEnumerable<PlacedLoad> loads, BalanceBy by)
    {
        var row = new decimal[system.Legs.Length];
        foreach (var load in loads)
        {
            foreach (var leg in load.Placement.Legs)
                row[(int)leg] += by is BalanceBy.ByConnected
                    ? load.Legs.VoltAmperesOn(leg).Value
                    : load.Placement.WattsOn(leg, load.RunningWatts).Value;
        }
        return [.. row];
    }

    private static ImmutableArray<ImmutableArray<decimal>> DemandRows(Schedule schedule) =>
        DemandBook.Work(schedule, ConnectedLoad.Of(schedule)) is { } demand
            ? [[.. schedule.Panel.System.Legs.Select(leg => demand.Legs.VoltAmperesOn(leg).Value)]]
            : [];
}
