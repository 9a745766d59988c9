using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>125 % of what is continuous, and 25 % of the largest motor, leg by leg.</summary>
public class MinimumAmpacityTests
{
    /// <summary>
    /// C14: a module study sheet (9 ballasts of 1.5 A, a dishwasher of 14.7 A) and an online course test (20 A continuous and
    /// 10 A). Devices seen; the second current derived.
    /// </summary>
    [Theory]
    [InlineData(13.5, 0, 16.875, 20)]
    [InlineData(14.7, 0, 18.375, 20)]
    [InlineData(20, 10, 35, 35)]
    public void Continuous_loads_count_125_percent(double continuous, double other, double needed, int device)
    {
        var assessed = Sketch.Of(Sketch.OnePole(
            1, Sketch.Of(((decimal)continuous).A) with { Continuous = true }, Sketch.Of(((decimal)other).A))).Assessed();
        assessed.Demand!.MinimumAmpacity.Value.ShouldBe((decimal)needed);
        assessed.Feeder!.StandardOcpd.ShouldBe(device.A);
    }

    [Fact]
    public void Sixteen_amperes_continuous_ask_for_exactly_20_A() =>
        Demand(Sketch.OnePole(1, Sketch.Of(1920.VA) with { Continuous = true })).MinimumAmpacity.ShouldBe(20.A);

    /// <summary>B32: a continuing-education question on 430.24: motors of 12, 11 and 6 A. Derived from its options.</summary>
    [Fact]
    public void Three_motors_count_the_largest_at_125_percent() =>
        Demand(Sketch.OnePole(1, Motor(12), Motor(11), Motor(6))).MinimumAmpacity.ShouldBe(32.A);

    /// <summary>B34: a training tutorial, electricianmath.com, four 5 hp motors at 240 V, 28 A each. Seen.</summary>
    [Fact]
    public void Of_four_equal_motors_one_counts_125_percent() =>
        Demand(Sketch.TwoPole(1, Sketch.Of(5.Hp) with { Count = 4 })).MinimumAmpacity.ShouldBe(119.A);

    /// <summary>Three of 5 A are three motors, and the largest of four is the one of 12 A. Derived.</summary>
    [Fact]
    public void The_largest_motor_is_one_motor_not_several_alike() =>
        Demand(Sketch.OnePole(1, Motor(5) with { Count = 3 }, Motor(12))).MinimumAmpacity.ShouldBe(30.A);

    [Fact]
    public void A_leg_without_a_motor_adds_none()
    {
        var demand = Demand(Sketch.OnePole(1, Motor(12)), Sketch.OnePole(3, Sketch.Of(8.A)));
        demand.LargestMotorOn(Leg.B).ShouldBeNull();
        demand.MinimumAmpacityOn(Leg.B).ShouldBe(8.A);
        demand.WhyMinimumAmpacity().Steps.Count(step => step.Label.Contains("largest motor", StringComparison.Ordinal))
            .ShouldBe(1);
    }

    [Theory]
    [InlineData(LoadKind.Motor, 10)]
    [InlineData(LoadKind.Cooling, 10)]
    [InlineData(LoadKind.HeatPump, 10)]
    [InlineData(LoadKind.Appliance, 8)]
    public void Compressors_count_as_motors(LoadKind kind, int needed) =>
        Demand(Sketch.OnePole(1, Sketch.Of(8.A, kind))).MinimumAmpacity.ShouldBe(needed.A);

    /// <summary>
    /// A02: NEC Annex D, example D1(b), 2005 print: 99 A and 104 A on the legs, 110 A device. Seen. The base of 78 A on each leg is
    /// laid in as other load; motors at the amperes of the print.
    /// </summary>
    [Fact]
    public void The_house_of_Annex_D_carries_99_A_and_104_A_with_the_largest_motor_of_each_leg()
    {
        var assessed = Sketch.Of(
            Sketch.TwoPole(1, Sketch.Of(78.A), Motor(6)),
            Sketch.OnePole(2, Motor(12)),
            Sketch.OnePole(4, Sketch.Of(10.A), Motor(8))).Assessed();
        assessed.Demand!.MinimumAmpacityOn(Leg.A).ShouldBe(99.A);
        assessed.Demand.MinimumAmpacityOn(Leg.B).ShouldBe(104.A);
        assessed.Feeder!.StandardOcpd.ShouldBe(110.A);
    }

    /// <summary>430.24 asks 125 % for continuous loads that are no motors; motors have their own 25 %.</summary>
    [Fact]
    public void A_continuous_motor_counts_its_quarter_once() =>
        Demand(Sketch.OnePole(1, Motor(12) with { Continuous = true })).MinimumAmpacity.ShouldBe(15.A);

    [Fact]
    public void A_load_rated_in_hp_is_a_motor_whatever_its_kind() =>
        Demand(Sketch.OnePole(1, Sketch.Of(0.5m.Hp, LoadKind.Appliance))).MinimumAmpacity.ShouldBe(9.8m.A * 125.Pct);

    [Fact]
    public void Demand_itself_holds_neither_addition()
    {
        var demand = Demand(Sketch.OnePole(1, Motor(12), Sketch.Of(8.A) with { Continuous = true }));
        demand.Amperes.ShouldBe(20.A);
        demand.MinimumAmpacity.ShouldBe(25.A);
    }

    [Fact]
    public void A_reduced_continuous_load_adds_a_quarter_of_what_is_left_of_it()
    {
        var receptacles = Sketch.Of(20_000.VA, LoadKind.Receptacle) with { Continuous = true };
        var demand = Sketch.Of(Sketch.TwoPole(1, receptacles)).By(DemandMethodName.NonDwelling).Assessed().Demand!;
        demand.Total.ShouldBe(15_000.VA);
        demand.MinimumAmpacity.ShouldBe(15_000.VA * 125.Pct / 240.V);
    }

    [Fact]
    public void Its_derivation_names_the_motor_and_its_sections()
    {
        var steps = Demand(Sketch.OnePole(1, Motor(12), Sketch.Of(8.A) with { Continuous = true }))
            .WhyMinimumAmpacity().Steps;
        steps[1].Cite.ToString().ShouldBe("NEC 2023 215.2, 215.3");
        steps[2].Label.ShouldBe("A: 25 % of the largest motor, Circuit 1: motor, 12 A x 120 V, A to neutral");
        steps[2].Cite.ToString().ShouldBe("NEC 2023 430.24");
        steps[^1].Value.ShouldBe(25);
    }

    private static Load Motor(int current) => Sketch.Of(current.A, LoadKind.Motor);

    private static DemandResult Demand(params ReadOnlySpan<Circuit> circuits) => Sketch.Of(circuits).Assessed().Demand!;
}
