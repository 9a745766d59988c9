using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>Ratings of transfer equipment. Common practice, no source.</summary>
public class TransferRatingsTests
{
    [Fact]
    public void The_ratings_run_from_30_A_to_600_A_and_go_up()
    {
        TransferRatings.All.Select(rating => rating.Value)
            .ShouldBe([30m, 50m, 60m, 100m, 125m, 150m, 200m, 225m, 400m, 600m]);
        TransferRatings.All.ShouldBeInOrder();
    }

    [Theory]
    [InlineData(0, 30)]
    [InlineData(30, 30)]
    [InlineData(31, 50)]
    [InlineData(61, 100)]
    [InlineData(600, 600)]
    public void The_smallest_rating_that_will_do_is_taken(int current, int rating) =>
        TransferRatings.NextUp(current.A).ShouldBe(rating.A);

    [Fact]
    public void Above_600_A_there_is_none() => TransferRatings.NextUp(600.1m.A).ShouldBeNull();

    [Fact]
    public void The_list_is_cited_as_common_practice() =>
        TransferRatings.Cite.ToString().ShouldBe("common practice, no source");
}
