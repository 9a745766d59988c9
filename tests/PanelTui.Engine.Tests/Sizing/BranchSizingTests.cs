using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>The smallest breaker and wire of a branch circuit, and what it loses on the way.</summary>
public class BranchSizingTests
{
    /// <summary>C14: 13.5 A, 14.7 A, and 20 A with 10 A more, the first ones continuous. Devices seen in a study sheet and a course test.</summary>
    [Theory]
    [InlineData(13.5, 0, 16.875, 20)]
    [InlineData(14.7, 0, 18.375, 20)]
    [InlineData(20, 10, 35, 35)]
    public void A_continuous_load_counts_125_percent(double continuous, double other, double needed, int breaker)
    {
        var sized = Sized(Sketch.OnePole(
            1, Sketch.Of(((decimal)continuous).A) with { Continuous = true }, Sketch.Of(((decimal)other).A)));
        ((double)sized.Load.Device.Value).ShouldBe(needed, 1e-9);
        sized.StandardBreaker.ShouldBe(breaker.A);
    }

    /// <summary>
    /// 240.6(A): standard ratings begin at 15 A. In 2023 they begin at 10 A, for lighting on 14 AWG copper-clad aluminum
    /// alone: from memory.
    /// </summary>
    [Theory]
    [InlineData(CodeEdition.Nec2017)]
    [InlineData(CodeEdition.Nec2020)]
    [InlineData(CodeEdition.Nec2023)]
    public void No_breaker_below_15_A_is_proposed_for_a_small_load(CodeEdition edition) =>
        Sketch.Of(Sketch.OnePole(1, Sketch.Of(5.A))).In(edition).Assessed().Branches.Single().StandardBreaker.ShouldBe(15.A);

    /// <summary>422.13: 5500 W at 240 V take 22.92 A, with a quarter more 28.65 A, 30 A. Seen in a trade forum thread.</summary>
    [Theory]
    [InlineData(5500, 30)]
    [InlineData(4500, 25)]
    public void A_storage_water_heater_counts_as_continuous(int watts, int breaker) =>
        Sized(Sketch.TwoPole(1, Sketch.Of(watts.W, LoadKind.WaterHeater))).StandardBreaker.ShouldBe(breaker.A);

    /// <summary>625.41, 625.42. Seen in a trade forum thread and a licence-renewal question.</summary>
    [Theory]
    [InlineData(16, 20)]
    [InlineData(24, 30)]
    [InlineData(32, 40)]
    [InlineData(40, 50)]
    [InlineData(48, 60)]
    public void A_vehicle_charger_counts_125_percent(int current, int breaker) =>
        Sized(Sketch.TwoPole(1, Sketch.Of(current.A, LoadKind.Ev))).StandardBreaker.ShouldBe(breaker.A);

    /// <summary>B36: 430.22, 3 hp at 115 V and 5 hp at 230 V. Seen in a trade magazine and a tutorial.</summary>
    [Theory]
    [InlineData(1, 3, 42.5)]
    [InlineData(2, 5, 35)]
    public void A_motor_counts_125_percent_on_its_wire(int poles, int horsepower, double needed) =>
        ((double)Sized(Sketch.Circuit(1, poles, Sketch.Of(horsepower.Hp))).Load.Conductor.Required.Value).ShouldBe(needed);

    /// <summary>B32: 430.24, 12, 11 and 6 A: 1.25 x 12 + 11 + 6 = 32 A. Derived; the inputs are of a course's question.</summary>
    [Fact]
    public void Of_several_motors_the_largest_alone_counts_more() =>
        Sized(Sketch.OnePole(1, Motor(12), Motor(11), Motor(6))).Load.Conductor.Required.ShouldBe(32.A);

    [Fact]
    public void A_nameplate_ampacity_stands_for_the_load()
    {
        var unit = Sketch.Of(16.A, LoadKind.Cooling) with { MinimumCircuitAmpacity = 21.A, MaximumOvercurrentProtection = 35.A };
        var sized = Sized(Sketch.TwoPole(1, unit, Sketch.Of(2.A)));
        sized.Load.Conductor.ShouldBe(new ConductorLoad(23.A, 23.A));
        (sized.StandardBreaker, sized.Range).ShouldBe((25.A, null));
    }

    [Theory]
    [InlineData(15, "14 AWG Cu")]
    [InlineData(20, "12 AWG Cu")]
    [InlineData(30, "10 AWG Cu")]
    [InlineData(50, "6 AWG Cu")]
    public void The_smallest_wire_suits_the_breaker_it_has(int breaker, string wire) =>
        Smallest(Sketch.OnePole(1, Sketch.Of(100.VA)) with { Breaker = new Breaker(breaker.A) }).ShouldBe(wire);

    [Fact]
    public void On_a_motor_circuit_the_wire_goes_by_the_motor() =>
        Smallest(Sketch.TwoPole(1, Sketch.Of(1.Hp)) with { Breaker = new Breaker(30.A, 2) }).ShouldBe("14 AWG Cu");

    [Fact]
    public void Several_receptacles_forbid_the_next_size_up()
    {
        var one = Sketch.OnePole(1, Sketch.Load(null, LoadKind.Receptacle)) with { Breaker = new Breaker(60.A) };
        Smallest(one).ShouldBe("6 AWG Cu");
        Smallest(one with { Loads = [one.Loads[0] with { Outlets = 2 }] }).ShouldBe("4 AWG Cu");
    }

    [Fact]
    public void A_circuit_without_a_load_asks_for_nothing()
    {
        var sized = Sized(Sketch.OnePole(1));
        (sized.StandardBreaker, sized.Smallest, sized.Drop).ShouldBe((null, null, null));
    }

    [Fact]
    public void A_spare_counts_no_load() =>
        Sized(Sketch.OnePole(1, Sketch.Of(1200.VA)) with { IsSpare = true }).Load.ShouldBe(default);

    [Fact]
    public void Of_a_group_on_one_circuit_the_largest_counts()
    {
        var (heat, cool) = (Sketch.Of(10.A) with { Group = "hvac" }, Sketch.Of(8.A) with { Group = "hvac" });
        Sized(Sketch.OnePole(1, heat, cool)).Load.AtFull.ShouldBe(10.A);
    }

    /// <summary>Chapter 9 Table 8: 2 x 16 A x 1.98 ohm/kft x 100 ft = 6.34 V, 5.28 % of 120 V. Derived from the seen table.</summary>
    [Fact]
    public void A_branch_at_120_V_loses_out_and_back() => Share(1, 1920).ShouldBe(5.28, 1e-9);

    [Fact]
    public void A_branch_at_240_V_loses_half_of_that_share() => Share(2, 3840).ShouldBe(2.64, 1e-9);

    /// <summary>VD = 1.732 x I x Z x L / 1000 on three phases, over 208 V.</summary>
    [Fact]
    public void A_three_phase_branch_loses_root_3_of_one_way()
    {
        var current = 3744 / (Math.Sqrt(3) * 208);
        Share(3, 3744, PanelSystem.Wye).ShouldBe(100 * Math.Sqrt(3) * current * 1.98 / 10 / 208, 0.01);
    }

    [Fact]
    public void A_branch_at_208_V_loses_out_and_back_of_208_V() =>
        Share(2, 2080, PanelSystem.Wye).ShouldBe(100 * 2 * 10 * 1.98 / 10 / 208, 1e-6);

    [Fact]
    public void Together_with_the_feeder_the_legs_it_sits_on_count()
    {
        var feeder = new Feeder { Conductor = Copper(6), Length = 100.Ft };
        var schedule = Sketch.Of(Wired(Sketch.OnePole(1, Sketch.Of(1200.VA))), Wired(Sketch.TwoPole(6, Sketch.Of(2400.VA)))) with { Feeder = feeder };
        var assessed = schedule.Assessed();
        var legs = assessed.Feeder!.VoltageDrop!.Legs;
        assessed.Branches[0].Drop!.OfFeeder.ShouldBe(legs[Leg.A].Share);
        assessed.Branches[1].Drop!.OfFeeder!.Value.Value.ShouldBe((legs[Leg.A].Share.Value + legs[Leg.B].Share.Value) / 2);
        assessed.Branches[0].Drop!.WithFeeder!.Value.Value.ShouldBe(3.3m + (100 * 30 * 0.0491m / 120));
    }

    [Fact]
    public void A_lift_of_the_feeder_is_not_counted_on()
    {
        var feeder = new Feeder { Conductor = Copper(6), Length = 100.Ft };
        var schedule = Sketch.Of(Sketch.OnePole(1, Sketch.Of(6000.VA)), Wired(Sketch.OnePole(3, Sketch.Of(120.VA)))) with { Feeder = feeder };
        var assessed = schedule.Assessed();
        assessed.Feeder!.VoltageDrop!.Legs[Leg.B].Share.ShouldBeLessThan(Percent.Zero);
        assessed.Branches[1].Drop!.OfFeeder.ShouldBe(Percent.Zero);
    }

    [Fact]
    public void Each_branch_answers_why()
    {
        var steps = Sketch.Of(Wired(Sketch.OnePole(1, Sketch.Of(1200.VA)))).Assessed().Why("branch:1")!.Steps;
        steps.Single(step => step.Label == "Voltage drop to the farthest load").Value.ShouldBe(3.3m);
        steps.ShouldContain(step => step.Label == "The smallest wire: 12 AWG Cu");
    }

    private static Conductor Copper(int gauge) => new(ConductorSize.Awg(gauge), ConductorMetal.Copper);

    private static Load Motor(int current) => Sketch.Of(current.A, LoadKind.Motor);

    private static Circuit Wired(Circuit circuit) => circuit with { Wire = Copper(12), Length = 100.Ft };

    private static BranchSizing Sized(Circuit circuit) => Sketch.Of(circuit).Assessed().Branches.Single();

    private static string Smallest(Circuit circuit) => $"{Sized(circuit).Smallest!.Conductor}";

    private static double Share(int poles, int power, PanelSystem? system = null) => (double)Sketch
        .Of(system ?? PanelSystem.SplitPhase, Wired(Sketch.Circuit(1, poles, Sketch.Of(power.VA))))
        .Assessed().Branches.Single().Drop!.Share.Value;
}
