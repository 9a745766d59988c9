using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>Article 220 Part III for other than dwellings.</summary>
public class NonDwellingTests
{
    /// <summary>
    /// B30: a commercial wiring textbook, 2015 edition, sample problem 12-9: 67 receptacles in a hardware store. Seen.
    /// </summary>
    [Fact]
    public void Sixty_seven_receptacles_count_11_030_VA()
    {
        var demand = Demand(Sketch.OnePole(1, Receptacles(67)));
        demand.Worksheet.Lines.Select(line => line.Connected.Total.Value).ShouldBe([10_000, 2060]);
        demand.Total.ShouldBe(11_030.VA);
    }

    [Fact]
    public void Fifty_receptacles_get_no_reduction() =>
        Demand(Sketch.OnePole(1, Receptacles(50))).Worksheet.Lines.Single().Demand.Total.ShouldBe(9000.VA);

    [Fact]
    public void A_factor_falls_on_each_leg_in_proportion_to_what_is_connected_there()
    {
        var demand = Demand(Sketch.OnePole(1, Receptacles(90)), Sketch.OnePole(3, Receptacles(30)));
        var counted = 10_000 + ((21_600 - 10_000) / 2);
        ((double)demand.Legs.VoltAmperesOn(Leg.A).Value).ShouldBe(counted * 0.75, 1e-9);
        ((double)demand.Legs.VoltAmperesOn(Leg.B).Value).ShouldBe(counted * 0.25, 1e-9);
    }

    /// <summary>
    /// A08: NEC Annex D, example D3, 2005 print: a store with 9000 VA of lighting by area, 80 receptacles, a show window and a
    /// sign. 28 400 VA seen; 32 450 VA, 135 A and 150 A from memory. Laid from line to line, so that both legs carry half.
    /// </summary>
    [Fact]
    public void The_store_of_Annex_D_counts_28_400_VA_and_asks_for_a_150_A_device()
    {
        var assessed = Store().Assessed();
        assessed.Demand!.Total.ShouldBe(28_400.VA);
        ((double)assessed.Demand.MinimumAmpacity.Value * 240).ShouldBe(32_450, 1e-9);
        assessed.Feeder!.StandardOcpd.ShouldBe(150.A);
    }

    /// <summary>NEC Table 220.56: four units count 80 %. From memory.</summary>
    [Fact]
    public void Kitchen_equipment_counts_by_the_number_of_units() =>
        Demand(Sketch.OnePole(1, Kitchen(1000, 4))).Total.ShouldBe(3200.VA);

    /// <summary>NEC 220.56: never less than the two largest together. From memory.</summary>
    [Fact]
    public void Kitchen_equipment_never_counts_less_than_the_two_largest_units() =>
        Demand(Sketch.OnePole(1, Kitchen(5000, 2), Kitchen(100, 4))).Total.ShouldBe(10_000.VA);

    /// <summary>NEC 220.60. Seen.</summary>
    [Fact]
    public void Of_a_group_only_the_largest_counts_and_the_rest_is_named()
    {
        var (heat, cold) = (Sketch.Of(3000.VA, LoadKind.SpaceHeat) with { Group = "hvac" },
            Sketch.Of(2000.VA, LoadKind.Cooling) with { Group = "hvac" });
        var demand = Demand(Sketch.TwoPole(1, heat), Sketch.TwoPole(2, cold));
        demand.Total.ShouldBe(3000.VA);
        demand.WhyDemand().Steps[0].Label.ShouldStartWith("Left out, never with the larger of group hvac: Circuit 2");
    }

    [Theory]
    [InlineData(LoadKind.Lighting, "NEC 2023 Table 220.45, from memory")]
    [InlineData(LoadKind.Receptacle, "NEC 2023 220.47")]
    [InlineData(LoadKind.Kitchen, "NEC 2023 Table 220.56, from memory")]
    [InlineData(LoadKind.SpaceHeat, "NEC 2023 220.51")]
    [InlineData(LoadKind.Motor, "NEC 2023 220.50, from memory")]
    [InlineData(LoadKind.Appliance, "NEC 2023 220.14(A), from memory")]
    [InlineData(LoadKind.Ev, "NEC 2023 220.57")]
    public void Each_line_cites_its_section(LoadKind kind, string cite) =>
        Demand(Sketch.OnePole(1, Sketch.Of(500.VA, kind))).Steps.Single().Cite.ToString().ShouldBe(cite);

    [Fact]
    public void Every_kind_of_load_has_a_line_of_its_own()
    {
        var kinds = Enum.GetValues<LoadKind>();
        var lines = Demand(Sketch.OnePole(1, [.. kinds.Select(kind => Sketch.Of(100.VA, kind))])).Worksheet.Lines;
        lines.Select(line => line.Label).Distinct().Count().ShouldBe(kinds.Length);
    }

    private static DemandResult Demand(params ReadOnlySpan<Circuit> circuits) =>
        Sketch.Of(circuits).By(DemandMethodName.NonDwelling).Assessed().Demand!;

    private static Load Receptacles(int outlets) =>
        Sketch.Load(null, LoadKind.Receptacle) with { Outlets = outlets };

    private static Load Kitchen(int power, int count) => Sketch.Of(power.VA, LoadKind.Kitchen) with { Count = count };

    private static Schedule Store()
    {
        Load Lit(int power) => Sketch.Of(power.VA, LoadKind.Lighting) with { Continuous = true };
        return Sketch.Of(
            Sketch.TwoPole(1, Lit(9000)),
            Sketch.TwoPole(5, Lit(6000)),
            Sketch.TwoPole(9, Lit(1200)),
            Sketch.TwoPole(2, Receptacles(80))).By(DemandMethodName.NonDwelling);
    }
}
