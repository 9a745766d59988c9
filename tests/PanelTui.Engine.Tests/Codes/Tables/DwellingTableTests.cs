using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>Lighting, appliances, dryers, vehicles and tiers of dwellings, with the edition where each changed.</summary>
public class DwellingTableTests
{
    /// <summary>Seen: Annex D, examples D1(a) and D5(a), and a 2023 page for the new numbers. 2020's number is from memory.</summary>
    [Theory]
    [InlineData(CodeEdition.Nec2017, "NEC 2017 220.12, from memory", "NEC 2017 Table 220.42")]
    [InlineData(CodeEdition.Nec2020, "NEC 2020 220.14(J), from memory", "NEC 2020 Table 220.42")]
    [InlineData(CodeEdition.Nec2023, "NEC 2023 220.41, from memory", "NEC 2023 Table 220.45")]
    public void Lighting_moved_with_the_editions(CodeEdition edition, string unit, string tiers)
    {
        DwellingLighting.UnitLoadSection.In(edition).ToString().ShouldBe(unit);
        DwellingLighting.TierSection.In(edition).ToString().ShouldBe(tiers);
    }

    [Fact]
    public void Lighting_is_3_VA_a_square_foot_in_three_tiers()
    {
        DwellingLighting.UnitLoad.ShouldBe(3.VA);
        DwellingLighting.Tiers.ShouldBe(
            [new(3_000.VA, 100.Pct), new(120_000.VA, 35.Pct), new(VoltAmperes.Unlimited, 25.Pct)]);
    }

    /// <summary>
    /// Table 220.54. Seen: 1 (Annex D, D1(a)), 9, 10, 11 and the formula of 12 to 23 (a web digest). The others are from memory.
    /// </summary>
    [Theory]
    [InlineData(1, 100)]
    [InlineData(4, 100)]
    [InlineData(5, 85)]
    [InlineData(6, 75)]
    [InlineData(7, 65)]
    [InlineData(8, 60)]
    [InlineData(9, 55)]
    [InlineData(10, 50)]
    [InlineData(11, 47)]
    [InlineData(12, 46)]
    [InlineData(23, 35)]
    [InlineData(24, 34.5)]
    [InlineData(42, 25.5)]
    [InlineData(43, 25)]
    [InlineData(100, 25)]
    public void Dryers_have_a_factor_by_how_many_there_are(int dryers, double factor) =>
        DryerFactors.For(dryers).ShouldBe(((decimal)factor).Pct);

    [Theory]
    [InlineData(1, "NEC 2020 Table 220.54")]
    [InlineData(8, "NEC 2020 Table 220.54, from memory")]
    [InlineData(9, "NEC 2020 Table 220.54")]
    [InlineData(23, "NEC 2020 Table 220.54")]
    [InlineData(24, "NEC 2020 Table 220.54, from memory")]
    public void A_row_of_dryers_that_was_not_seen_says_so(int dryers, string cite) =>
        DryerFactors.SectionFor(dryers).In(CodeEdition.Nec2020).ToString().ShouldBe(cite);

    /// <summary>220.57: a continuing-education page on 2023. Seen.</summary>
    [Theory]
    [InlineData(CodeEdition.Nec2020, 5000, 5000, "NEC 2020 220.14(A), from memory")]
    [InlineData(CodeEdition.Nec2023, 5000, 7200, "NEC 2023 220.57")]
    [InlineData(CodeEdition.Nec2023, 7201, 7201, "NEC 2023 220.57")]
    public void Vehicle_charging_has_a_floor_since_2023(CodeEdition edition, int nameplate, int counted, string cite)
    {
        VehicleCharging.Each(nameplate.VA, edition).ShouldBe(counted.VA);
        VehicleCharging.SectionIn(edition).In(edition).ToString().ShouldBe(cite);
    }

    /// <summary>220.82(B): Annex D, example D2(a), seen. 220.83: rule text in trade forum threads, seen.</summary>
    [Fact]
    public void The_optional_tiers_end_at_10_and_at_8_kVA()
    {
        OptionalDwelling.GeneralTiers.ShouldBe([new(10_000.VA, 100.Pct), new(VoltAmperes.Unlimited, 40.Pct)]);
        ExistingDwelling.Tiers.ShouldBe([new(8_000.VA, 100.Pct), new(VoltAmperes.Unlimited, 40.Pct)]);
    }

    /// <summary>220.82(C): 40 % seen in Annex D, example D2(a); 65 % from memory.</summary>
    [Fact]
    public void Heat_counts_65_or_40_percent() =>
        (OptionalDwelling.FewHeaters, OptionalDwelling.ManyHeaters, OptionalDwelling.Supplementary)
            .ShouldBe((65.Pct, 40.Pct, 65.Pct));
}
