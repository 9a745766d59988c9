using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// NEC Table 240.6(A). Seen: the list in a continuing-education lesson on the 2023 change, expertce.com, "How does the 2023
/// NEC change standard circuit breaker amp ratings", and identically in two training pages.
/// </summary>
public class StandardRatingsTests
{
    private static readonly int[] Printed =
    [
        15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500,
        600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
    ];

    [Theory]
    [InlineData(CodeEdition.Nec2017)]
    [InlineData(CodeEdition.Nec2020)]
    public void Up_to_2020_the_list_runs_from_15_A_to_6000_A(CodeEdition edition) =>
        StandardRatings.In(edition).Select(rating => rating.Value).ShouldBe(Printed.Select(rating => (decimal)rating));

    [Fact]
    public void The_2023_edition_adds_10_A_breakers() =>
        StandardRatings.In(CodeEdition.Nec2023).Select(rating => rating.Value)
            .ShouldBe([10, .. Printed.Select(rating => (decimal)rating)]);

    [Fact]
    public void The_list_goes_up() => StandardRatings.In(CodeEdition.Nec2023).ShouldBeInOrder();

    /// <summary>C15: next-size selections of Annex D and training pages. Seen.</summary>
    [Theory]
    [InlineData(104, 110)]
    [InlineData(122, 125)]
    [InlineData(135, 150)]
    [InlineData(136, 150)]
    [InlineData(145, 150)]
    [InlineData(194, 200)]
    [InlineData(110, 110)]
    [InlineData(6000, 6000)]
    public void A_feeder_device_is_the_next_size_up(int current, int rating) =>
        StandardRatings.NextUp(current.A, CodeEdition.Nec2020).ShouldBe(rating.A);

    /// <summary>C15: motor feeder devices, 430.62, go down. Seen.</summary>
    [Theory]
    [InlineData(190, 175)]
    [InlineData(562, 500)]
    [InlineData(140, 125)]
    [InlineData(173, 150)]
    [InlineData(175, 175)]
    public void A_motor_feeder_device_is_the_next_size_down(int current, int rating) =>
        StandardRatings.NextDown(current.A, CodeEdition.Nec2020).ShouldBe(rating.A);

    [Fact]
    public void Beyond_the_list_there_is_no_rating()
    {
        StandardRatings.NextUp(6001.A, CodeEdition.Nec2023).ShouldBeNull();
        StandardRatings.NextDown(9.A, CodeEdition.Nec2023).ShouldBeNull();
    }

    [Theory]
    [InlineData(CodeEdition.Nec2020, false)]
    [InlineData(CodeEdition.Nec2023, true)]
    public void Ten_amperes_is_standard_from_2023_on(CodeEdition edition, bool standard) =>
        StandardRatings.Has(10.A, edition).ShouldBe(standard);
}
