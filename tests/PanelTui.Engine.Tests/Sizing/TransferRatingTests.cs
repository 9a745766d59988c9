using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>Transfer equipment is rated for the worst leg and for the devices ahead. Common practice, no source.</summary>
public class TransferRatingTests
{
    [Fact]
    public void The_worst_leg_decides_where_no_device_is_known() =>
        Rating(load: 41).Standard.ShouldBe(50.A);

    [Theory]
    [InlineData(60, 50, 60)]
    [InlineData(40, 70, 100)]
    public void The_device_ahead_on_either_supply_decides_where_it_is_larger(int feeder, int source, int standard) =>
        Rating(load: 20, feeder, source).Standard.ShouldBe(standard.A);

    [Fact]
    public void With_its_own_device_only_the_load_decides() =>
        Rating(load: 20, feeder: 100, source: 50, own: true).Required.ShouldBe(20.A);

    [Theory]
    [InlineData(59, false)]
    [InlineData(60, true)]
    public void A_stated_rating_must_reach_what_is_required(int stated, bool ok) =>
        Rating(load: 20, feeder: 60, stated: stated).Ok.ShouldBe(ok);

    [Fact]
    public void Without_a_stated_rating_there_is_nothing_to_judge() => Rating(load: 20).Ok.ShouldBeNull();

    [Fact]
    public void Above_600_A_no_rating_is_made() => Rating(load: 601).Standard.ShouldBeNull();

    [Fact]
    public void Its_derivation_ends_with_the_rating()
    {
        var steps = Rating(load: 20, feeder: 60, source: 50).Why().Steps;
        steps.Select(step => step.Value).ShouldBe([20, 60, 50, 60, 60]);
        steps[^1].Cite.ToString().ShouldBe("common practice, no source");
    }

    private static TransferRating Rating(
        int load, int? feeder = null, int? source = null, bool own = false, int? stated = null)
    {
        var schedule = Sketch.Of(Sketch.TwoPole(1, Sketch.Of(load.A))) with
        {
            Feeder = new Feeder { Ocpd = feeder?.A },
            Source = new StandbySource { Kind = SourceKind.Generator, Ocpd = source?.A },
            Transfer = new TransferEquipment { IntegralOcpd = own, Rating = stated?.A },
        };
        return schedule.Assessed().Transfer!;
    }
}
