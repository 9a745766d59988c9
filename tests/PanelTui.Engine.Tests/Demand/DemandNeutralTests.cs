using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>The neutral of the calculated load, 220.61(A).</summary>
public class DemandNeutralTests
{
    /// <summary>D17: a training page on unbalanced load, electricianmath.com; rule seen, numbers derived.</summary>
    [Fact]
    public void It_is_the_larger_leg_to_neutral_with_the_other_off()
    {
        var demand = Panel().Assessed().Demand!;
        demand.NeutralVoltAmperes.ShouldBe(4200.VA);
        demand.Neutral.ShouldBe(35.A);
        demand.WhyNeutral().Steps.Select(step => step.Label).ShouldBe(
        [
            "A: No scenario is written: every circuit on standby", "Line to neutral on A",
            "B: No scenario is written: every circuit on standby", "Line to neutral on B",
            "The largest of them", "VA / 120 V",
        ]);
        demand.WhyNeutral().Steps[4].Cite.ToString().ShouldBe("NEC 2023 220.61(A)");
    }

    [Fact]
    public void With_legs_in_phase_it_is_the_sum()
    {
        var source = new StandbySource { Kind = SourceKind.Inverters, Arrangement = SourceArrangement.InPhase };
        (Panel() with { Source = source }).Assessed().Demand!.NeutralVoltAmperes.ShouldBe(7500.VA);
    }

    /// <summary>B27: a trade magazine's code quiz of January 2005: 475 A on a 208Y/120 V feeder, 392.5 A. Seen.</summary>
    [Theory]
    [InlineData(475, 392.5)]
    [InlineData(200, 200)]
    [InlineData(201, 200.7)]
    public void What_is_above_200_A_counts_70_percent(int current, double neutral)
    {
        var demand = OnEachLeg(PanelSystem.Wye, Sketch.Of(current.A)).Assessed().Demand!;
        ((double)demand.Neutral.Value).ShouldBe(neutral, 1e-9);
        demand.NeutralVoltAmperes.ShouldBe(current.A * 120.V);
    }

    /// <summary>220.61(C)(1), seen: three wires of a wye carry as much on the neutral as on a leg.</summary>
    [Fact]
    public void Two_legs_of_a_wye_and_one_leg_have_no_reduction()
    {
        OnEachLeg(PanelSystem.TwoLegsOfWye, Sketch.Of(475.A)).Assessed().Demand!.Neutral.ShouldBe(475.A);
        OnEachLeg(PanelSystem.OneLeg, Sketch.Of(475.A)).Assessed().Demand!.Neutral.ShouldBe(475.A);
    }

    [Fact]
    public void Legs_in_phase_have_no_reduction_and_add()
    {
        var source = new StandbySource { Kind = SourceKind.Inverters, Arrangement = SourceArrangement.InPhase };
        (OnEachLeg(PanelSystem.SplitPhase, Sketch.Of(300.A)) with { Source = source }).Assessed()
            .Demand!.Neutral.ShouldBe(600.A);
    }

    /// <summary>B29: a practice test on 220.61: 400 A where nonlinear load is not reduced, 340 A where it may be. Seen.</summary>
    [Theory]
    [InlineData(true, 400)]
    [InlineData(false, 340)]
    public void Nonlinear_load_is_not_reduced_on_a_wye(bool wye, int neutral)
    {
        var loads = new[] { Sketch.Of(200.A), Sketch.Of(200.A) with { Nonlinear = true } };
        var demand = OnEachLeg(wye ? PanelSystem.Wye : PanelSystem.SplitPhase, loads).Assessed().Demand!;
        demand.Neutral.ShouldBe(neutral.A);
        demand.WhyNeutral().Steps[^1].Value.ShouldBe(neutral);
        demand.WhyNeutral().Steps[^1].Cite.ToString().ShouldBe("NEC 2023 220.61(B)(2)");
    }

    /// <summary>220.61(C)(2), seen with B29: the line of the worksheet that a nonlinear load is counted in changes nothing.</summary>
    [Fact]
    public void Nonlinear_load_stays_unreduced_when_two_categories_are_counted_as_one()
    {
        var loads = OnEachLeg(PanelSystem.Wye, Sketch.Of(1000.VA), Sketch.Of(600.VA) with { Nonlinear = true })
            .Assessed().Connected.Loads.ToLookup(load => load.Load.Nonlinear);
        var both = Category([.. loads[false]]).With(Category([.. loads[true]]));
        both.Nonlinear.ToNeutral.Values.ShouldBe([600.VA, 600.VA, 600.VA]);
        both.Connected.ToNeutral.Values.ShouldBe([1600.VA, 1600.VA, 1600.VA]);
    }

    private static DemandCategory Category(PlacedLoad[] loads) =>
        DemandCategory.Of("", PanelSystem.Wye, loads, Citation.Schedule);

    private static Schedule OnEachLeg(PanelSystem system, params Load[] loads) =>
        Sketch.Of(system, [.. system.Legs.Select(leg => Sketch.OnePole((2 * (int)leg) + 1, loads))]);

    private static Schedule Panel() => Sketch.Of(
        Sketch.OnePole(1, Sketch.Of(4200.VA)),
        Sketch.OnePole(3, Sketch.Of(3300.VA)),
        Sketch.TwoPole(5, Sketch.Of(9600.VA)));
}
