using CsCheck;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Properties;

/// <summary>What holds for every schedule.</summary>
public class AssessmentProperties
{
    private const decimal Noise = 1e-9m;

    [Fact]
    public void No_schedule_makes_the_engine_throw() => Generated.Any.Sample(
        schedule =>
        {
            var assessed = schedule.Assessed();
            return assessed.Figures.All(figure => assessed.Why(figure)!.Steps.Length > 0)
                && assessed.Scenarios.All(run => run.Running.Value >= 0 && run.Neutral.Value >= 0)
                && assessed.Findings.All(finding => finding.Message.Length > 0);
        },
        iter: 3000);

    [Fact]
    public void The_legs_add_up_to_the_whole() => Generated.Sensible.Sample(schedule =>
    {
        var connected = schedule.Assessed().Connected;
        return Near(schedule.Panel.System.Legs.Sum(leg => connected.VoltAmperesOn(leg).Value), connected.Total.Value)
            && Near(connected.Loads.Sum(load => load.Size.Power.Value), connected.Total.Value);
    });

    /// <summary>Floors, lighting by area and a measured peak may come to more than what is connected.</summary>
    [Fact]
    public void Where_factors_only_reduce_demand_is_no_more_than_what_is_connected() => Generated.Sensible.Sample(schedule =>
        WithoutFloors(schedule).Assessed() is not { Demand: { } demand } assessed
        || (demand.Total.Value <= assessed.Connected.Total.Value + Noise
            && schedule.Panel.System.Legs.All(leg =>
                demand.Legs.VoltAmperesOn(leg).Value <= assessed.Connected.VoltAmperesOn(leg).Value + Noise)));

    [Fact]
    public void The_minimum_ampacity_is_no_less_than_the_calculated_current() => Generated.Sensible.Sample(schedule =>
        schedule.Assessed().Demand is not { } demand
        || schedule.Panel.System.IsWye
        || schedule.Panel.System.Legs.All(leg => demand.MinimumAmpacityOn(leg) >= demand.Legs.AmperesOn(leg)));

    [Fact]
    public void The_neutral_carries_no_more_than_all_legs_put_on_it() => Generated.Sensible.Sample(schedule =>
    {
        var connected = schedule.Assessed().Connected;
        var all = connected.Legs.ToNeutral.Values.Sum(power => power.Value) / 120;
        return connected.Neutral.Value <= all + Noise;
    });

    [Fact]
    public void A_breaker_moved_to_a_space_on_the_same_leg_changes_no_leg() => Generated.Sensible.Sample(schedule =>
    {
        var moved = Moved(schedule, schedule.Panel.System.Legs.Length);
        return Legs(moved).SequenceEqual(Legs(schedule)) && Demand(moved).SequenceEqual(Demand(schedule));
    });

    [Fact]
    public void On_two_legs_one_row_down_mirrors_the_figures() => Generated.Sensible.Sample(schedule =>
    {
        var two = schedule with { Panel = schedule.Panel with { System = PanelSystem.SplitPhase } };
        var mirrored = Moved(two, rows: 1);
        return Legs(mirrored).SequenceEqual(Legs(two).Reverse())
            && mirrored.Assessed().Connected.Neutral == two.Assessed().Connected.Neutral
            && mirrored.Assessed().Connected.Imbalance == two.Assessed().Connected.Imbalance;
    });

    [Fact]
    public void A_scenario_runs_as_much_on_its_legs_as_its_loads_take() => Generated.Sensible.Sample(schedule =>
        schedule.Assessed().Scenarios.All(run =>
            Near(run.Running.Value, run.Loads.Sum(load => load.RunningWatts.Value))));

    [Fact]
    public void The_same_schedule_gives_the_same_answer() => Generated.Sensible.Sample(schedule =>
        Demand(schedule).SequenceEqual(Demand(schedule))
        && schedule.Assessed().Findings.Select(finding => finding.Message)
            .SequenceEqual(schedule.Assessed().Findings.Select(finding => finding.Message)));

    [Fact]
    public void The_lines_and_the_legs_add_up_to_the_demand() => Generated.Sensible.Sample(schedule =>
        schedule.Assessed().Demand is not { } demand
        || (Near(demand.Steps.Sum(step => step.Value), demand.Total.Value)
            && Near(schedule.Panel.System.Legs.Sum(leg => demand.Legs.VoltAmperesOn(leg).Value), demand.Total.Value)));

    [Fact]
    public void Each_load_is_counted_or_left_out_with_a_reason() => Generated.Sensible.Sample(schedule =>
        schedule.Assessed() is not { Demand: { } demand } assessed
        || demand.Method == DemandMethodName.Selected
        || (demand.Worksheet.Counted.Length + demand.Worksheet.LeftOut.Length == assessed.Connected.Loads.Length
            && demand.Worksheet.LeftOut.All(load => load.Why.Length > 0)));

    [Fact]
    public void The_neutral_of_the_demand_is_no_more_than_its_legs_together() => Generated.Sensible.Sample(schedule =>
        schedule.Assessed().Demand is not { } demand
        || demand.Worksheet.NeutralLines != demand.Worksheet.Lines
        || demand.NeutralVoltAmperes.Value <= demand.Total.Value + Noise);

    private static Schedule WithoutFloors(Schedule schedule) => schedule with
    {
        Demand = schedule.Demand with { FloorArea = null, MeasuredPeak = null },
        Circuits =
        [
            .. schedule.Circuits.Select(circuit => circuit with
            {
                Loads = [.. circuit.Loads.Select(load => HasFloor(load.Kind, schedule) ? load with { Kind = LoadKind.Other } : load)],
            }),
        ],
    };

    private static bool HasFloor(LoadKind kind, Schedule schedule) => kind switch
    {
        LoadKind.Dryer or LoadKind.Ev => true,
        LoadKind.Range or LoadKind.WallOven or LoadKind.Cooktop => schedule.Panel.System.Legs.Length == 3,
        _ => false,
    };

    private static bool Near(decimal left, decimal right) => Math.Abs(left - right) <= Noise;

    private static Schedule Moved(Schedule schedule, int rows) => schedule with
    {
        Circuits = [.. schedule.Circuits.Select(circuit => circuit with { Space = circuit.Space.Below(rows) })],
    };

    private static IEnumerable<decimal> Legs(Schedule schedule)
    {
        var connected = schedule.Assessed().Connected;
        return schedule.Panel.System.Legs.SelectMany(leg => new[] { connected.AmperesOn(leg).Value });
    }

    private static IEnumerable<decimal> Demand(Schedule schedule) => schedule.Assessed().Demand is { } demand
        ? schedule.Panel.System.Legs.Select(leg => demand.MinimumAmpacityOn(leg).Value)
        : [];
}
