using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>Article 220 Part III for dwellings, beyond what the published examples hold.</summary>
public class DwellingStandardTests
{
    [Fact]
    public void Lighting_by_area_stands_for_the_outlets_and_says_so()
    {
        var demand = House(1000, Lit(1, 10), Lit(3, 30));
        demand.Total.ShouldBe(3000.VA);
        demand.Steps.Single().Label.ShouldBe("General lighting by area, first 3000 VA");
        demand.WhyDemand().Steps.Take(3).Select(step => step.Label).ShouldBe(
        [
            "Left out, within the floor area: Circuit 1: receptacle, 10 x 180 VA, A to neutral",
            "Left out, within the floor area: Circuit 3: receptacle, 30 x 180 VA, B to neutral",
            "1000 ft2 x 3 VA",
        ]);
    }

    [Fact]
    public void Lighting_by_area_falls_on_the_legs_as_the_outlets_do()
    {
        var demand = House(1000, Lit(1, 10), Lit(3, 30));
        demand.Legs.VoltAmperesOn(Leg.A).ShouldBe(750.VA);
        demand.Legs.VoltAmperesOn(Leg.B).ShouldBe(2250.VA);
    }

    [Fact]
    public void Without_outlets_lighting_by_area_falls_evenly() =>
        House(1000).Legs.VoltAmperesOn(Leg.A).ShouldBe(1500.VA);

    [Fact]
    public void Without_an_area_lighting_counts_as_connected_and_the_line_says_so()
    {
        var demand = House(null, Lit(1, 10), Sketch.OnePole(3, Sketch.Of(500.VA, LoadKind.Lighting)));
        demand.Total.ShouldBe(2300.VA);
        demand.Steps.Single().Label.ShouldBe("General lighting as connected, first 3000 VA");
    }

    /// <summary>Annex D, example D3, seen: of table and connected lighting the larger.</summary>
    [Fact]
    public void More_lighting_than_the_area_gives_counts_as_connected()
    {
        var lamps = Sketch.OnePole(1, Sketch.Of(3001.VA, LoadKind.Lighting));
        House(1000, lamps).Steps.First().Label.ShouldStartWith("General lighting as connected");
        House(1001, lamps).Steps.First().Label.ShouldStartWith("General lighting by area");
    }

    /// <summary>220.53 as changed in 2020, seen: 1/4 hp or 500 W.</summary>
    [Theory]
    [InlineData(CodeEdition.Nec2017, 499, 75)]
    [InlineData(CodeEdition.Nec2020, 499, 100)]
    [InlineData(CodeEdition.Nec2020, 500, 75)]
    public void An_appliance_below_500_W_is_no_fourth_one_since_2020(CodeEdition edition, int watts, int factor)
    {
        var demand = Sketch.Of(Sketch.TwoPole(1, Appliance(1000), Appliance(1000), Appliance(1000), Appliance(watts)))
            .By(DemandMethodName.DwellingStandard).In(edition).Assessed().Demand!;
        demand.Total.ShouldBe((3000 + watts).VA * factor.Pct);
    }

    [Fact]
    public void Small_appliances_beside_four_large_ones_count_in_full() =>
        House(null, Sketch.TwoPole(1, Appliance(1000) with { Count = 4 }, Appliance(100))).Total.ShouldBe(3100.VA);

    [Theory]
    [InlineData(0.25, 75)]
    [InlineData(0.1, 100)]
    public void A_motor_counts_by_its_horsepower(double output, int factor)
    {
        var motor = Sketch.Of(((decimal)output).Hp, LoadKind.Appliance);
        var lines = House(null, Sketch.TwoPole(1, Appliance(1000) with { Count = 3 }, motor)).Worksheet.Lines;
        lines.Single().Factor.ShouldBe(factor.Pct);
    }

    [Fact]
    public void Ranges_dryers_heat_cooling_and_vehicles_are_no_appliances_of_220_53()
    {
        LoadKind[] others = [LoadKind.Range, LoadKind.Dryer, LoadKind.SpaceHeat, LoadKind.HeatPump, LoadKind.Ev];
        var loads = others.Select(kind => Sketch.Of(8000.VA, kind)).Append(Appliance(1000) with { Count = 3 });
        House(null, Sketch.TwoPole(1, [.. loads])).Worksheet.Lines[0].Factor.ShouldBe(100.Pct);
    }

    /// <summary>Annex D, example D6, and Note 1: from 12 kW, a major fraction of a kW counts as one.</summary>
    [Theory]
    [InlineData(12_400, 8000)]
    [InlineData(12_500, 8400)]
    [InlineData(13_400, 8400)]
    public void A_range_above_12_kW_adds_5_percent_a_kilowatt(int rating, int counted) =>
        House(null, Sketch.TwoPole(1, Sketch.Of(rating.VA, LoadKind.Range))).Total.ShouldBe(counted.VA);

    /// <summary>Column C for two is 11 kW, less than 8 kW and 80 % of 8 kW; Note 3 is a permission.</summary>
    [Fact]
    public void Of_the_ways_through_the_cooking_table_the_least_counts()
    {
        var (range, oven) = (Sketch.Of(11_000.VA, LoadKind.Range), Sketch.Of(8_000.VA, LoadKind.WallOven));
        var demand = House(null, Sketch.TwoPole(1, range), Sketch.TwoPole(2, oven));
        demand.Total.ShouldBe(11_000.VA);
        demand.Steps.Single().Label.ShouldBe("Cooking, column C for 2");
    }

    [Fact]
    public void Cooking_outside_the_table_counts_its_nameplate()
    {
        House(null, Sketch.OnePole(1, Sketch.Of(1750.VA, LoadKind.Cooktop))).Total.ShouldBe(1750.VA);
        House(null, Sketch.TwoPole(1, Sketch.Of(27_001.VA, LoadKind.Range))).Total.ShouldBe(27_001.VA);
    }

    /// <summary>220.61(B)(1): 70 % on 120/240 V; (C): all of it on two legs of a wye. Seen.</summary>
    [Theory]
    [InlineData(false, 2800)]
    [InlineData(true, 4000)]
    public void A_range_puts_70_percent_on_the_neutral_but_not_on_a_wye(bool wye, int neutral)
    {
        var system = wye ? PanelSystem.TwoLegsOfWye : PanelSystem.SplitPhase;
        var demand = Sketch.Of(system, Sketch.TwoPole(1, Sketch.Of(12_000.VA, LoadKind.Range)))
            .By(DemandMethodName.DwellingStandard).Assessed().Demand!;
        demand.NeutralVoltAmperes.ShouldBe(neutral.VA);
    }

    [Fact]
    public void Dryers_between_three_legs_count_twice_the_most_between_two()
    {
        Circuit Dryer(int space) => Sketch.TwoPole(space, Sketch.Of(5000.VA, LoadKind.Dryer));
        var demand = Sketch.Of(PanelSystem.Wye, Dryer(1), Dryer(7), Dryer(9)).By(DemandMethodName.DwellingStandard)
            .Assessed().Demand!;
        demand.Steps.Single().Label.ShouldBe("Clothes dryers, twice the 2 between two legs, 5000 VA or more");
        demand.Total.ShouldBe(30_000.VA);
    }

    [Fact]
    public void Heat_that_comes_on_with_a_heat_pump_counts_with_it()
    {
        var heat = Sketch.Of(5000.VA, LoadKind.SpaceHeat) with { Supplementary = true };
        House(null, Sketch.TwoPole(1, Sketch.Of(3000.VA, LoadKind.HeatPump), heat)).Total.ShouldBe(8000.VA);
    }

    private static DemandResult House(int? area, params ReadOnlySpan<Circuit> circuits)
    {
        var schedule = Sketch.Of(circuits).By(DemandMethodName.DwellingStandard);
        var basis = schedule.Demand with { FloorArea = area is { } feet ? new SquareFeet(feet) : null };
        return (schedule with { Demand = basis }).Assessed().Demand!;
    }

    private static Circuit Lit(int space, int outlets) =>
        Sketch.OnePole(space, Sketch.Load(null, LoadKind.Receptacle) with { Outlets = outlets });

    private static Load Appliance(int power) => Sketch.Of(power.VA, LoadKind.Appliance);
}
