using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// NEC Chapter 9 Table 8, uncoated and stranded, unchanged from 2011 to 2023. Seen: a tutor's page of the 2011 table, and a second
/// reference page with areas. Two web copies print the solid figures as stranded and do not count.
/// </summary>
public class ConductorResistanceTests
{
    [Theory]
    [InlineData("14 AWG", 4110, 3.14, 5.17)]
    [InlineData("12 AWG", 6530, 1.98, 3.25)]
    [InlineData("10 AWG", 10380, 1.24, 2.04)]
    [InlineData("8 AWG", 16510, 0.778, 1.28)]
    [InlineData("6 AWG", 26240, 0.491, 0.808)]
    [InlineData("4 AWG", 41740, 0.308, 0.508)]
    [InlineData("3 AWG", 52620, 0.245, 0.403)]
    [InlineData("2 AWG", 66360, 0.194, 0.319)]
    [InlineData("1 AWG", 83690, 0.154, 0.253)]
    [InlineData("1/0 AWG", 105600, 0.122, 0.201)]
    [InlineData("2/0 AWG", 133100, 0.0967, 0.159)]
    [InlineData("3/0 AWG", 167800, 0.0766, 0.126)]
    [InlineData("4/0 AWG", 211600, 0.0608, 0.1)]
    [InlineData("250 kcmil", 250000, 0.0515, 0.0847)]
    [InlineData("300 kcmil", 300000, 0.0429, 0.0707)]
    [InlineData("350 kcmil", 350000, 0.0367, 0.0605)]
    [InlineData("400 kcmil", 400000, 0.0321, 0.0529)]
    [InlineData("500 kcmil", 500000, 0.0258, 0.0424)]
    public void Each_row_is_as_printed(string size, int area, double copper, double aluminum)
    {
        var row = ConductorResistance.Rows.Single(row => $"{row.Size}" == size);
        (row.CircularMils, (double)row.Copper, (double)row.Aluminum).ShouldBe((area, copper, aluminum));
    }

    [Fact]
    public void There_are_eighteen_rows_that_grow_in_area_and_fall_in_ohms()
    {
        ConductorResistance.Rows.Length.ShouldBe(18);
        ConductorResistance.Rows.Select(row => row.CircularMils).ShouldBeInOrder();
        ConductorResistance.Rows.Select(row => row.Copper).ShouldBeInOrder(SortDirection.Descending);
        ConductorResistance.Rows.Select(row => row.Aluminum).ShouldBeInOrder(SortDirection.Descending);
    }

    [Fact]
    public void An_area_that_is_short_by_its_own_rounding_will_do()
    {
        ConductorResistance.OfArea(16_511.25m).ShouldBe(ConductorSize.Awg(8));
        ConductorResistance.OfArea(16_530).ShouldBe(ConductorSize.Awg(6));
        ConductorResistance.OfArea(501_000).ShouldBeNull();
    }

    [Fact]
    public void A_size_that_is_not_here_has_no_figure()
    {
        ConductorResistance.Find(new Conductor(ConductorSize.Awg(18), ConductorMetal.Copper)).ShouldBeNull();
        ConductorResistance.AreaOf(ConductorSize.OfKcmil(600)).ShouldBeNull();
    }
}
