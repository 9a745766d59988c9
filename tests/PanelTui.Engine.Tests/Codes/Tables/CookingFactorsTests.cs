using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// Table 220.55. Seen: column A for 1 and 3; B for 1, 2 and 3; C for 1, 2, 3, 8, 14, 15, 20, 24 and 30 (a training drill sheet of
/// 2011, Annex D examples, an exam-book question). The other rows are from memory.
/// </summary>
public class CookingFactorsTests
{
    [Theory]
    [InlineData(1, 80, 80, 8)]
    [InlineData(2, 75, 65, 11)]
    [InlineData(3, 70, 55, 14)]
    [InlineData(4, 66, 50, 17)]
    [InlineData(5, 62, 45, 20)]
    [InlineData(10, 49, 34, 25)]
    [InlineData(15, 40, 32, 30)]
    [InlineData(16, 39, 28, 31)]
    [InlineData(25, 30, 26, 40)]
    [InlineData(26, 30, 24, 41)]
    [InlineData(30, 30, 24, 45)]
    [InlineData(31, 30, 22, 46)]
    [InlineData(40, 30, 22, 55)]
    [InlineData(50, 30, 20, 62.5)]
    [InlineData(51, 30, 18, 63.25)]
    [InlineData(60, 30, 18, 70)]
    [InlineData(61, 30, 16, 70.75)]
    public void Each_row_reads_as_printed(int appliances, int a, int b, double c)
    {
        CookingFactors.A(appliances).ShouldBe(a.Pct);
        CookingFactors.B(appliances).ShouldBe(b.Pct);
        CookingFactors.C(appliances).ShouldBe(((decimal)c * 1000).VA);
    }

    [Fact]
    public void Factors_never_rise_and_kilowatts_never_fall()
    {
        var counts = Enumerable.Range(1, 80).ToArray();
        counts.Select(count => CookingFactors.A(count)).Reverse().ShouldBeInOrder();
        counts.Select(count => CookingFactors.B(count)).Reverse().ShouldBeInOrder();
        counts.Select(count => CookingFactors.C(count)).ShouldBeInOrder();
    }

    [Theory]
    [InlineData(1750, CookingColumn.BelowTable)]
    [InlineData(1751, CookingColumn.A)]
    [InlineData(3499, CookingColumn.A)]
    [InlineData(3500, CookingColumn.B)]
    [InlineData(8750, CookingColumn.B)]
    [InlineData(8751, CookingColumn.C)]
    [InlineData(27_000, CookingColumn.C)]
    [InlineData(27_001, CookingColumn.BeyondTable)]
    public void A_rating_belongs_to_a_column(int rating, CookingColumn column) =>
        CookingFactors.ColumnOf(rating.VA).ShouldBe(column);

    [Theory]
    [InlineData(CookingColumn.C, 8, "NEC 2023 Table 220.55")]
    [InlineData(CookingColumn.C, 9, "NEC 2023 Table 220.55, from memory")]
    [InlineData(CookingColumn.B, 3, "NEC 2023 Table 220.55")]
    [InlineData(CookingColumn.A, 2, "NEC 2023 Table 220.55, from memory")]
    public void A_row_that_was_not_seen_says_so(CookingColumn column, int appliances, string cite) =>
        CookingFactors.SectionFor(column, appliances).In(CodeEdition.Nec2023).ToString().ShouldBe(cite);
}
