using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>Demand factors and loads by the piece.</summary>
public class FactorTests
{
    /// <summary>NEC Table 220.56. From memory.</summary>
    [Theory]
    [InlineData(1, 100)]
    [InlineData(2, 100)]
    [InlineData(3, 90)]
    [InlineData(4, 80)]
    [InlineData(5, 70)]
    [InlineData(6, 65)]
    [InlineData(40, 65)]
    public void Kitchen_equipment_has_a_factor_by_the_number_of_units(int units, int factor) =>
        KitchenFactors.For(units).ShouldBe(factor.Pct);

    [Fact]
    public void Kitchen_factors_never_rise() =>
        KitchenFactors.Rows.Reverse().ShouldBeInOrder();

    /// <summary>NEC 220.44, from 2023 on 220.47. Seen: Annex D, example D3, and a commercial wiring textbook of 2015.</summary>
    [Fact]
    public void Receptacles_count_in_full_up_to_10_kVA_and_half_above() =>
        ReceptacleTiers.Rows.ShouldBe([new(10_000.VA, 100.Pct), new(VoltAmperes.Unlimited, 50.Pct)]);

    [Theory]
    [InlineData(CodeEdition.Nec2017, "NEC 2017 220.44")]
    [InlineData(CodeEdition.Nec2020, "NEC 2020 220.44")]
    [InlineData(CodeEdition.Nec2023, "NEC 2023 220.47")]
    public void The_receptacle_section_moved_in_2023(CodeEdition edition, string cite) =>
        ReceptacleTiers.Section.In(edition).ToString().ShouldBe(cite);

    /// <summary>Seen: 180 VA and 1500 VA in Annex D, examples D3 and D1(a); the section letters are from memory.</summary>
    [Fact]
    public void A_yoke_is_180_VA_and_a_small_appliance_or_laundry_circuit_1500_VA() =>
        (UnitLoads.Receptacle, UnitLoads.SmallAppliance, UnitLoads.Laundry).ShouldBe((180.VA, 1500.VA, 1500.VA));
}
