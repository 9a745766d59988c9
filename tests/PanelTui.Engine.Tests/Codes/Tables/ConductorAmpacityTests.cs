using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// NEC Table 310.16, in 2017 Table 310.15(B)(16), the figures of 2011 and later. Seen: Table E3705.1 of the residential code,
/// which reprints it, in a state's adopted text, and a page of the 2018 residential code. Older copies differ and do not count.
/// </summary>
public class ConductorAmpacityTests
{
    [Theory]
    [InlineData("14 AWG", new[] { 15, 20, 25 }, new int[0])]
    [InlineData("12 AWG", new[] { 20, 25, 30 }, new[] { 15, 20, 25 })]
    [InlineData("10 AWG", new[] { 30, 35, 40 }, new[] { 25, 30, 35 })]
    [InlineData("8 AWG", new[] { 40, 50, 55 }, new[] { 35, 40, 45 })]
    [InlineData("6 AWG", new[] { 55, 65, 75 }, new[] { 40, 50, 55 })]
    [InlineData("4 AWG", new[] { 70, 85, 95 }, new[] { 55, 65, 75 })]
    [InlineData("3 AWG", new[] { 85, 100, 115 }, new[] { 65, 75, 85 })]
    [InlineData("2 AWG", new[] { 95, 115, 130 }, new[] { 75, 90, 100 })]
    [InlineData("1 AWG", new[] { 110, 130, 145 }, new[] { 85, 100, 115 })]
    [InlineData("1/0 AWG", new[] { 125, 150, 170 }, new[] { 100, 120, 135 })]
    [InlineData("2/0 AWG", new[] { 145, 175, 195 }, new[] { 115, 135, 150 })]
    [InlineData("3/0 AWG", new[] { 165, 200, 225 }, new[] { 130, 155, 175 })]
    [InlineData("4/0 AWG", new[] { 195, 230, 260 }, new[] { 150, 180, 205 })]
    [InlineData("250 kcmil", new[] { 215, 255, 290 }, new[] { 170, 205, 230 })]
    [InlineData("300 kcmil", new[] { 240, 285, 320 }, new[] { 195, 230, 260 })]
    [InlineData("350 kcmil", new[] { 260, 310, 350 }, new[] { 210, 250, 280 })]
    [InlineData("400 kcmil", new[] { 280, 335, 380 }, new[] { 225, 270, 305 })]
    [InlineData("500 kcmil", new[] { 320, 380, 430 }, new[] { 260, 310, 350 })]
    public void Each_row_is_as_printed(string size, int[] copper, int[] aluminum)
    {
        var row = ConductorAmpacity.Rows.Single(row => $"{row.Size}" == size);
        row.Copper.ShouldBe(copper);
        row.Aluminum.ShouldBe(aluminum);
    }

    [Fact]
    public void There_are_eighteen_rows_from_14_AWG_to_500_kcmil()
    {
        ConductorAmpacity.Rows.Length.ShouldBe(18);
        ConductorAmpacity.Rows[0].Size.ShouldBe(ConductorSize.Awg(14));
        ConductorAmpacity.Rows[^1].Size.ShouldBe(ConductorSize.OfKcmil(500));
    }

    [Fact]
    public void Thicker_conductors_and_warmer_columns_carry_more()
    {
        ConductorAmpacity.Rows.Select(row => row.Size).ShouldBeInOrder();
        ConductorAmpacity.Rows.AtLeastOne().ShouldAllBe(row => row.Copper.SequenceEqual(row.Copper.Order()));
        for (var column = 0; column < 3; column++)
        {
            ConductorAmpacity.Rows.Select(row => row.Copper[column]).ShouldBeInOrder();
            ConductorAmpacity.Rows.Skip(1).Select(row => row.Aluminum[column]).ShouldBeInOrder();
        }
    }

    [Fact]
    public void Aluminum_starts_at_12_AWG_and_copper_clad_goes_with_it()
    {
        ConductorAmpacity.Sizes(ConductorMetal.Aluminum)[0].Size.ShouldBe(ConductorSize.Awg(12));
        Find(14, ConductorMetal.Aluminum).ShouldBeNull();
        Find(10, ConductorMetal.CopperCladAluminum).ShouldBe(30.A);
        Find(16, ConductorMetal.Copper).ShouldBeNull();
    }

    [Theory]
    [InlineData(CodeEdition.Nec2017, "NEC 2017 Table 310.15(B)(16)")]
    [InlineData(CodeEdition.Nec2020, "NEC 2020 Table 310.16")]
    [InlineData(CodeEdition.Nec2023, "NEC 2023 Table 310.16")]
    public void The_table_moved_in_2020(CodeEdition edition, string cite) =>
        $"{ConductorAmpacity.Section.In(edition)}".ShouldBe(cite);

    private static Amperes? Find(int gauge, ConductorMetal metal) =>
        ConductorAmpacity.Find(new Conductor(ConductorSize.Awg(gauge), metal), TemperatureColumn.At75);
}
