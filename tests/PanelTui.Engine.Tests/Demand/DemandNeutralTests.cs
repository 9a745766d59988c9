using PanelTui.Engine.Demand;
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
        demand.WhyNeutral().Steps[2].Cite.ToString().ShouldBe("NEC 2023 220.61(A)");
    }

    [Fact]
    public void With_legs_in_phase_it_is_the_sum()
    {
        var source = new StandbySource { Kind = SourceKind.Inverters, Arrangement = SourceArrangement.InPhase };
        (Panel() with { Source = source }).Assessed().Demand!.NeutralVoltAmperes.ShouldBe(7500.VA);
    }

    private static Schedule Panel() => Sketch.Of(
        Sketch.OnePole(1, Sketch.Of(4200.VA)),
        Sketch.OnePole(3, Sketch.Of(3300.VA)),
        Sketch.TwoPole(5, Sketch.Of(9600.VA)));
}
