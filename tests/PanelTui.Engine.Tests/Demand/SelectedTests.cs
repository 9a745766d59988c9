using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>What the user means to run at one time, NEC 702.4.</summary>
public class SelectedTests
{
    private static readonly Circuit Pump = Sketch.TwoPole(1, Sketch.Of(2400.VA));

    private static readonly Circuit Freezer = Sketch.OnePole(5, Sketch.Of(1300.VA));

    private static readonly Circuit Lights = Sketch.OnePole(2, Sketch.Of(200.VA));

    [Fact]
    public void The_scenario_that_loads_its_worst_leg_most_counts()
    {
        var demand = Demand(Running("Night", "c1", "c2"), Running("Day", "c5"));
        demand.Total.ShouldBe(2600.VA);
        demand.Steps.Single().Label.ShouldBe("Scenario Night, which loads its worst leg most");
    }

    /// <summary>1500 VA on one leg load it more than 2400 VA over two.</summary>
    [Fact]
    public void More_in_all_counts_less_than_more_on_one_leg() =>
        Demand(Running("Pump", "c1"), Running("Leg A", "c5", "c2")).Total.ShouldBe(1500.VA);

    [Fact]
    public void Without_scenarios_every_circuit_on_standby_counts_and_a_step_says_so()
    {
        var demand = Demand();
        demand.Total.ShouldBe(3900.VA);
        demand.Steps.Single().Label.ShouldBe("No scenario is written: every circuit on standby");
    }

    [Theory]
    [InlineData(CodeEdition.Nec2017, "NEC 2017 702.4(B)(1)")]
    [InlineData(CodeEdition.Nec2020, "NEC 2020 702.4(B)(1)")]
    [InlineData(CodeEdition.Nec2023, "NEC 2023 702.4(A)(1)")]
    public void It_cites_the_section_of_the_edition(CodeEdition edition, string cite)
    {
        var schedule = Sketch.Of(Pump) with { Code = new CodeBasis { Edition = edition } };
        schedule.Assessed().Demand!.Steps.Single().Cite.ToString().ShouldBe(cite);
    }

    [Fact]
    public void Running_watts_play_no_part_in_sizing() =>
        Sketch.Of(Sketch.OnePole(1, Sketch.Of(1000.VA) with { Running = 300.W })).Assessed()
            .Demand!.Total.ShouldBe(1000.VA);

    private static DemandResult Demand(params ReadOnlySpan<Scenario> scenarios) =>
        Sketch.Of(Pump, Freezer, Lights).With(scenarios).Assessed().Demand!;

    private static Scenario Running(string name, params string[] ids) => new() { Name = name, Running = [.. ids] };
}
