using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests;

/// <summary>Everything that follows from a schedule, and why.</summary>
public class AssessmentTests
{
    private static readonly Schedule Shed = Sketch.Of(
        Sketch.OnePole(1, Sketch.Of(480.W, LoadKind.Lighting) with { Continuous = true }),
        Sketch.TwoPole(2, Sketch.Of(2.Hp)),
        Sketch.OnePole(3, Sketch.Load(null, LoadKind.Receptacle) with { Outlets = 6 }));

    [Fact]
    public void Every_figure_can_say_why() =>
        Shed.Assessed().Figures.ShouldBe([.. FigureNames.All, "branch:1", "branch:2", "branch:3"]);

    [Fact]
    public void A_figure_that_is_not_there_has_no_derivation()
    {
        Shed.Assessed().Why("weather").ShouldBeNull();
        Shed.By(DemandMethodName.Measured).Assessed().Figures
            .ShouldBe(["connected", "legs", "neutral", "imbalance", "chain", "branch:1", "branch:2", "branch:3"]);
        Shed.Assessed().Why("branch:9").ShouldBeNull();
        Shed.Assessed().Why("branch:").ShouldBeNull();
    }

    [Theory]
    [InlineData(FigureNames.Connected, 4440)]
    [InlineData(FigureNames.Legs, 21)]
    [InlineData(FigureNames.Neutral, 5)]
    [InlineData(FigureNames.MinimumAmpacity, 24)]
    [InlineData(FigureNames.FeederDevice, 25)]
    [InlineData(FigureNames.TransferRating, 30)]
    [InlineData(FigureNames.DemandNeutral, 9)]
    public void The_last_step_is_the_figure_itself(string figure, int value) =>
        Shed.Assessed().Why(figure)!.Steps[^1].Value.ShouldBe(value);

    [Fact]
    public void The_imbalance_ends_with_its_definition()
    {
        var step = Shed.Assessed().Why(FigureNames.Imbalance)!.Steps[^1];
        step.Label.ShouldBe("Imbalance: largest deviation of a leg from the mean of the legs, over that mean");
        step.Value.ShouldBe(100m * 300 / 2220);
    }

    [Fact]
    public void No_step_is_without_a_citation() =>
        Shed.Assessed().Figures.SelectMany(figure => Shed.Assessed().Why(figure)!.Steps)
            .AtLeastOne().ShouldAllBe(step => step.Cite.ToString().Length > 0 && step.Unit.Length > 0 != step.IsRemark);

    [Fact]
    public void A_schedule_without_circuits_comes_to_nothing()
    {
        var assessed = Sketch.Of().Assessed();
        assessed.Connected.Total.ShouldBe(VoltAmperes.Zero);
        assessed.Demand!.MinimumAmpacity.ShouldBe(Amperes.Zero);
        assessed.Findings.ShouldBeEmpty();
    }
}
