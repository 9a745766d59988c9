using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Switching;

namespace PanelTui.Engine.Tests.Running;

/// <summary>Loads of one group never run together: with one off, another of them runs.</summary>
public class GroupsOnStandbyTests
{
    private static readonly StandbySource Generator = new() { Kind = SourceKind.Generator, Continuous = 4000.W };

    [Fact]
    public void With_the_larger_one_off_the_smaller_one_runs()
    {
        var schedule = Schedule(Of(1, 1500, "h"), Of(3, 1200, "h"));
        var run = ScenarioRun.OfAll(schedule, schedule.Assessed().Connected.Loads);
        run.Running.ShouldBe(1500.W);
        run.Without(schedule.Circuits[0], schedule).Running.ShouldBe(1200.W);
    }

    /// <summary>2000 W may be on a leg: 1500 + 900 W are too much, and so are 1200 + 900 W in their stead.</summary>
    [Fact]
    public void Shedding_one_of_a_group_counts_what_runs_in_its_stead()
    {
        var schedule = Schedule(Of(1, 1500, "h") with { Priority = 1 }, Of(5, 1200, "h") with { Priority = 2 }, Of(9, 900, null));
        var run = ScenarioRun.OfAll(schedule, schedule.Assessed().Connected.Loads);
        var shedding = Shedding.Of(run, schedule);
        shedding.Shed.Select(circuit => circuit.Ordinal).ShouldBe([0, 1]);
        shedding.Left.Running.ShouldBe(900.W);
        shedding.Fits.ShouldBeTrue();
    }

    [Fact]
    public void In_phase_a_dead_load_keeps_no_live_one_of_its_group_off()
    {
        var dead = Sketch.TwoPole(1, Sketch.Of(4000.W) with { Group = "heat" });
        var schedule = Schedule(dead, Of(5, 1500, "heat")) with { Source = Generator with { Kind = SourceKind.Inverters, Arrangement = SourceArrangement.InPhase } };
        var run = ScenarioRun.OfAll(schedule, schedule.Assessed().Connected.Loads);
        run.Running.ShouldBe(1500.W);
        run.Dead.Length.ShouldBe(1);
    }

    [Fact]
    public void What_is_to_start_runs_instead_of_a_larger_one_of_its_group()
    {
        var cooler = Sketch.OnePole(5, Sketch.Of(1000.W, LoadKind.Motor) with { Group = "climate" }) with { Id = "cooler" };
        var schedule = Schedule(Of(1, 1500, "climate") with { Id = "heater" }, cooler) with
        {
            Scenarios = [new Scenario { Name = "Hot", Running = ["heater"], Starting = "cooler" }],
        };
        var run = schedule.Assessed().Scenarios.Single(one => one.Name == "Hot");
        run.Starts.Worst!.Starting[0].Circuit.Id.ShouldBe("cooler");
        run.Running.ShouldBe(1000.W);
    }

    [Fact]
    public void All_that_is_on_one_breaker_starts_as_it_closes()
    {
        var pumps = Sketch.OnePole(1, Sketch.Of(new Horsepower(1)) with { Count = 2 });
        var order = ScenarioRun.OfAll(Schedule(pumps), Schedule(pumps).Assessed().Connected.Loads).Starts;
        order.EasiestOrder.Single().Asked.ShouldBe(order.Together!.Asked);
    }

    [Fact]
    public void Automatic_equipment_that_must_not_close_is_to_be_set_to_off()
    {
        var schedule = Schedule(Of(1, 500, null)) with
        {
            Source = Generator with { Neutral = SourceNeutral.Bonded },
            Transfer = new TransferEquipment { Kind = TransferKind.Automatic, SwitchesNeutral = false },
        };
        SwitchingPlan.Of(schedule.Assessed()).Stops.ShouldContain(stop => stop.Contains("its selector to OFF", StringComparison.Ordinal));
    }

    [Fact]
    public void An_interlock_that_is_said_to_switch_the_neutral_settles_nothing()
    {
        var schedule = Schedule(Of(1, 500, null)) with
        {
            Source = Generator with { Neutral = SourceNeutral.Bonded },
            Transfer = new TransferEquipment { Kind = TransferKind.Interlock, SwitchesNeutral = true },
        };
        NeutralVerdict.Of(schedule)!.Bonds.ShouldBe(NeutralBonds.Unknown);
        NeutralVerdict.Of(schedule)!.Sign.ShouldBeNull();
        schedule.Assessed().Findings.ShouldContain(finding => finding.Rule == "interlock-switches-neutral");
        var plugged = schedule with { Source = schedule.Source! with { Outlet = "L14-30" } };
        plugged.Assessed().Findings.ShouldNotContain(finding => finding.Rule == "sign-at-inlet");
    }

    private static Circuit Of(int space, int watts, string? group) =>
        Sketch.OnePole(space, Sketch.Of(new Watts(watts)) with { Group = group });

    private static Schedule Schedule(params Circuit[] circuits) => Sketch.Of(circuits) with { Source = Generator };
}
