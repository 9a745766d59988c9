using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Tests.Running;

/// <summary>Which limit binds, what is shed until it fits, and what one unit alone does.</summary>
public class SheddingTests
{
    private static readonly StandbySource Pair = new()
    {
        Kind = SourceKind.Inverters,
        Arrangement = SourceArrangement.Split,
        ContinuousPerLeg = 7000.W,
        Outlet = "14-50",
        Ocpd = 60.A,
    };

    /// <summary>Common practice, no source: a 50 A 120/240 V outlet of a two-unit system shuts down above 50 A.</summary>
    [Fact]
    public void A_50_A_outlet_binds_before_two_units_of_7_kW()
    {
        var run = Run(Sketch.OnePole(1, Sketch.Of(6120.W)));
        run.Binding.ShouldBe(new SourceBound(BoundKind.Outlet, Leg.A, 51, 50, "A"));
        run.Binding!.Spare.ShouldBe(-1);
    }

    [Fact]
    public void The_planning_line_is_a_habit_and_binds_nothing()
    {
        var run = Run(Sketch.OnePole(1, Sketch.Of(5700.W)));
        run.Bounds.ShouldContain(bound => bound.Kind == BoundKind.Planning && !bound.Ok);
        run.Binding!.Ok.ShouldBeTrue();
    }

    /// <summary>A stacking manual's example: 25 A and 9 A on two units of 17 A fail, though the sum is 34 A.</summary>
    [Fact]
    public void Spare_power_on_one_leg_does_not_help_the_other()
    {
        var source = Pair with { ContinuousPerLeg = (17 * 120).W, Outlet = null, Ocpd = null };
        var run = Run(source, Sketch.OnePole(1, Sketch.Of((25 * 120).W)), Sketch.OnePole(3, Sketch.Of((9 * 120).W)));
        run.Binding!.Leg.ShouldBe(Leg.A);
        run.Binding.Ok.ShouldBeFalse();
        run.LargerThanOneUnit.Select(load => load.Circuit.Space).ShouldBe([new SpaceNumber(1)]);
    }

    [Fact]
    public void The_lowest_priority_goes_first_and_then_the_heaviest_without_one()
    {
        var shedding = Shed(
            Sketch.OnePole(1, Sketch.Of(3000.W)) with { Priority = 2 },
            Sketch.OnePole(2, Sketch.Of(1000.W)) with { Priority = 1 },
            Sketch.OnePole(5, Sketch.Of(5000.W)));
        shedding.Shed.Select(circuit => circuit.Space.Number).ShouldBe([2, 1]);
        shedding.Fits.ShouldBeTrue();
    }

    [Fact]
    public void What_hangs_on_the_other_leg_is_not_shed()
    {
        var shedding = Shed(
            Sketch.OnePole(3, Sketch.Of(1000.W)) with { Priority = 1 }, Sketch.OnePole(1, Sketch.Of(3000.W)), Sketch.OnePole(2, Sketch.Of(4000.W)));
        shedding.Shed.Select(circuit => circuit.Space.Number).ShouldBe([2]);
    }

    [Fact]
    public void On_one_unit_240_V_loads_stand_still_and_the_neutral_carries_the_sum()
    {
        var one = OneUnit.Of(
            Run(Sketch.OnePole(1, Sketch.Of(2640.W)), Sketch.OnePole(3, Sketch.Of(1080.W)), Sketch.TwoPole(5, Sketch.Of(3000.W))),
            Schedule(Pair, [Sketch.OnePole(1, Sketch.Of(2640.W)), Sketch.OnePole(3, Sketch.Of(1080.W)), Sketch.TwoPole(5, Sketch.Of(3000.W))]))!;
        one.Alone.Dead.Select(load => load.Circuit.Space.Number).ShouldBe([5]);
        one.Alone.Neutral.ShouldBe(31.A);
        one.Alone.Bounds.ShouldContain(bound => bound.Kind == BoundKind.Breaker && bound.Asked == 31);
        one.ByLeg[0].Dark.Select(circuit => circuit.Space.Number).ShouldBe([1]);
    }

    [Fact]
    public void On_one_unit_each_shared_neutral_is_named()
    {
        Circuit[] circuits =
        [
            Sketch.OnePole(1, Sketch.Of(500.W)) with { Multiwire = "bench", Tied = true },
            Sketch.OnePole(3, Sketch.Of(500.W)) with { Multiwire = "bench", Tied = true },
        ];
        OneUnit.Of(Run(circuits), Schedule(Pair, circuits))!.Shared.Single().Circuits.Length.ShouldBe(2);
    }

    /// <summary>Common practice, no source: the handles of one tie go down together, so the other half is off, too.</summary>
    [Fact]
    public void Circuits_whose_handles_are_tied_are_shed_together_at_the_turn_of_the_last_of_them()
    {
        Circuit Half(int space, int? priority) => Sketch.OnePole(space, Sketch.Of(1200.W)) with { Multiwire = "bench", Tied = true, Priority = priority };
        var shedding = Shed(Half(1, 1), Half(3, 3), Sketch.OnePole(5, Sketch.Of(3000.W)) with { Priority = 2 }, Sketch.OnePole(9, Sketch.Of(6000.W)));
        shedding.Shed.Select(circuit => circuit.Space.Number).ShouldBe([5, 1, 3]);
        shedding.Fits.ShouldBeTrue();
    }

    [Fact]
    public void A_source_of_one_unit_has_no_other() =>
        OneUnit.Of(Run(), Schedule(Pair with { Arrangement = SourceArrangement.OneUnit }, [])).ShouldBeNull();

    private static Shedding Shed(params Circuit[] circuits) => Shedding.Of(Run(circuits), Schedule(Pair, circuits));

    private static ScenarioRun Run(params Circuit[] circuits) => Run(Pair, circuits);

    private static ScenarioRun Run(StandbySource source, params Circuit[] circuits) => Schedule(source, circuits).Assessed().Scenarios[0];

    private static Schedule Schedule(StandbySource source, Circuit[] circuits) =>
        (Sketch.Of(circuits) with { Source = source }).With(new Scenario { Name = "All", RunsAll = true });
}
