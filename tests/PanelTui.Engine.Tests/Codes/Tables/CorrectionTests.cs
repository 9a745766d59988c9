using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// What heat and company leave of an ampacity. Seen: the ambient factors in a state's adopted residential code and on a page of
/// the 2018 residential code; the adjustments in two handbook copies of the table.
/// </summary>
public class CorrectionTests
{
    [Theory]
    [InlineData(10, 1.29, 1.2, 1.15)]
    [InlineData(15, 1.22, 1.15, 1.12)]
    [InlineData(20, 1.15, 1.11, 1.08)]
    [InlineData(25, 1.08, 1.05, 1.04)]
    [InlineData(30, 1.0, 1.0, 1.0)]
    [InlineData(35, 0.91, 0.94, 0.96)]
    [InlineData(40, 0.82, 0.88, 0.91)]
    [InlineData(45, 0.71, 0.82, 0.87)]
    [InlineData(50, 0.58, 0.75, 0.82)]
    [InlineData(55, 0.41, 0.67, 0.76)]
    [InlineData(60, null, 0.58, 0.71)]
    [InlineData(65, null, 0.47, 0.65)]
    [InlineData(70, null, 0.33, 0.58)]
    [InlineData(75, null, null, 0.5)]
    [InlineData(80, null, null, 0.41)]
    [InlineData(85, null, null, 0.29)]
    public void Each_ambient_row_is_as_printed(int upTo, double? at60, double? at75, double? at90) =>
        AmbientCorrection.Rows.Single(row => row.UpTo == upTo.DegC).Factors.Select(factor => (double?)factor)
            .ShouldBe([at60, at75, at90]);

    [Fact]
    public void There_are_sixteen_ambient_rows_and_each_hotter_one_leaves_less()
    {
        AmbientCorrection.Rows.Length.ShouldBe(16);
        AmbientCorrection.Rows.Select(row => row.UpTo.Value).ShouldBeInOrder();
        for (var column = 0; column < 3; column++)
            AmbientCorrection.Rows.Select(row => row.Factors[column] ?? 0).ShouldBeInOrder(SortDirection.Descending);
    }

    [Theory]
    [InlineData(-40, 1.2)]
    [InlineData(30, 1.0)]
    [InlineData(30.5, 0.94)]
    [InlineData(35, 0.94)]
    [InlineData(71, null)]
    [InlineData(86, null)]
    public void A_temperature_between_two_rows_goes_to_the_hotter_one(double ambient, double? factor) =>
        ((double?)AmbientCorrection.Find(new Celsius((decimal)ambient), TemperatureColumn.At75)).ShouldBe(factor);

    [Theory]
    [InlineData(1, 100)]
    [InlineData(3, 100)]
    [InlineData(4, 80)]
    [InlineData(6, 80)]
    [InlineData(7, 70)]
    [InlineData(9, 70)]
    [InlineData(10, 50)]
    [InlineData(20, 50)]
    [InlineData(21, 45)]
    [InlineData(30, 45)]
    [InlineData(31, 40)]
    [InlineData(40, 40)]
    [InlineData(41, 35)]
    [InlineData(200, 35)]
    public void More_than_three_conductors_together_carry_less_each(int conductors, int share) =>
        GroupingAdjustment.Find(conductors).ShouldBe(share.Pct);

    /// <summary>The ambient table's number in 2020 is from memory.</summary>
    [Theory]
    [InlineData(CodeEdition.Nec2017, "NEC 2017 Table 310.15(B)(2)(a)", "NEC 2017 Table 310.15(B)(3)(a)")]
    [InlineData(CodeEdition.Nec2020, "NEC 2020 Table 310.15(B)(1)", "NEC 2020 Table 310.15(C)(1)")]
    [InlineData(CodeEdition.Nec2023, "NEC 2023 Table 310.15(B)(1)(1)", "NEC 2023 Table 310.15(C)(1)")]
    public void Both_tables_moved_in_2020(CodeEdition edition, string ambient, string grouping)
    {
        $"{AmbientCorrection.Section.In(edition)}".ShouldBe(ambient);
        $"{GroupingAdjustment.Section.In(edition)}".ShouldBe(grouping);
    }
}
