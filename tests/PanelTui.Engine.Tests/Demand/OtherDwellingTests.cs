using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>The optional methods of dwellings and the measured load, beyond what the published examples hold.</summary>
public class OtherDwellingTests
{
    /// <summary>220.82(C)(4) and (5): 65 % below four heaters, from memory; 40 % from four on, seen in Annex D, D2(a).</summary>
    [Theory]
    [InlineData(3, 1950)]
    [InlineData(4, 1600)]
    public void Four_heaters_with_controls_of_their_own_count_less(int heaters, int counted) =>
        Demand(DemandMethodName.DwellingOptional, Heat(1000) with { Count = heaters }).Total.ShouldBe(counted.VA);

    /// <summary>220.82(C)(6). From memory.</summary>
    [Fact]
    public void Heat_that_is_on_for_hours_counts_in_full() =>
        Demand(DemandMethodName.DwellingOptional, Heat(4000) with { Continuous = true }).Total.ShouldBe(4000.VA);

    /// <summary>220.82(C)(3). From memory.</summary>
    [Fact]
    public void Heat_with_a_heat_pump_counts_65_percent_beside_it() => Demand(
        DemandMethodName.DwellingOptional,
        Sketch.Of(3000.VA, LoadKind.HeatPump),
        Heat(10_000) with { Supplementary = true }).Total.ShouldBe(9500.VA);

    [Fact]
    public void The_smaller_of_heating_and_cooling_is_named_as_left_out()
    {
        var demand = Demand(DemandMethodName.DwellingOptional, Heat(1000), Sketch.Of(900.VA, LoadKind.Cooling));
        demand.Total.ShouldBe(900.VA);
        demand.WhyDemand().Steps[0].Label.ShouldStartWith("Left out, never with cooling, which asks for more: Circuit 1");
    }

    /// <summary>Annex D, example D2(b), seen: it adds no 25 % of a motor.</summary>
    [Theory]
    [InlineData(DemandMethodName.DwellingOptional)]
    [InlineData(DemandMethodName.DwellingExisting)]
    public void The_optional_methods_hold_their_motors_already(DemandMethodName method)
    {
        var demand = Demand(method, Sketch.Of(10.A, LoadKind.Motor));
        demand.MinimumAmpacity.ShouldBe(10.A);
    }

    [Fact]
    public void A_continuous_load_adds_a_quarter_of_what_is_left_of_it() => Demand(
        DemandMethodName.DwellingOptional,
        Sketch.Of(10_000.VA),
        Sketch.Of(10_000.VA, LoadKind.Ev) with { Continuous = true }).MinimumAmpacity
        .ShouldBe((14_000.VA + (7_000.VA * 25.Pct)) / 240.V);

    [Theory]
    [InlineData(false, "NEC 2023 220.83(A)")]
    [InlineData(true, "NEC 2023 220.83(B)")]
    public void Added_cooling_moves_an_existing_dwelling_to_B(bool added, string cite) => Demand(
        DemandMethodName.DwellingExisting,
        Sketch.Of(5000.VA, LoadKind.Cooling) with { Added = added }).Steps.Single().Cite.ToString().ShouldBe(cite);

    /// <summary>220.83(B). From memory: four heaters with controls of their own are among all other loads.</summary>
    [Theory]
    [InlineData(3, 15_000)]
    [InlineData(4, 12_800)]
    public void Many_heaters_of_an_existing_dwelling_go_through_the_tier(int heaters, int counted) =>
        Demand(DemandMethodName.DwellingExisting, Heat(5000) with { Count = heaters }).Total.ShouldBe(counted.VA);

    [Fact]
    public void What_was_measured_stands_for_the_loads_that_were_there()
    {
        var demand = Measured(Sketch.Of(9000.VA), Sketch.Of(2400.VA) with { Added = true });
        demand.Total.ShouldBe((40.A * 125.Pct * 240.V) + 2400.VA);
        demand.WhyDemand().Steps[0].Label.ShouldStartWith("Left out, within the measured peak: Circuit 1");
    }

    [Fact]
    public void Added_loads_bring_their_continuous_quarter_and_their_largest_motor()
    {
        Load[] loads =
        [
            Sketch.Of(99.A, LoadKind.Motor),
            Sketch.Of(8.A, LoadKind.Motor) with { Added = true },
            Sketch.Of(4.A) with { Added = true, Continuous = true },
        ];
        Measured(loads).MinimumAmpacity.ShouldBe(50.A + 8.A + 4.A + (12.A * 25.Pct));
    }

    [Fact]
    public void The_neutral_of_a_measured_panel_carries_what_its_leg_carries() =>
        Measured().Neutral.ShouldBe(50.A);

    private static Load Heat(int power) => Sketch.Of(power.VA, LoadKind.SpaceHeat);

    private static DemandResult Demand(DemandMethodName method, params Load[] loads) =>
        Sketch.Of(Sketch.TwoPole(1, loads)).By(method).Assessed().Demand!;

    private static DemandResult Measured(params Load[] loads) => (Sketch.Of(Sketch.TwoPole(1, loads)) with
    {
        Demand = new DemandBasis { Method = DemandMethodName.Measured, MeasuredPeak = 40.A, MeasuredDays = 30 },
    }).Assessed().Demand!;
}
