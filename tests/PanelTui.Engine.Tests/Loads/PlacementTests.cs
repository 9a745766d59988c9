using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Loads;

/// <summary>Between which conductors a load sits, also where its breaker cannot be.</summary>
public class PlacementTests
{
    [Fact]
    public void A_two_pole_breaker_on_one_leg_puts_its_load_there() =>
        Place(PanelSystem.OneLeg, Sketch.TwoPole(1)).Legs.ShouldBe([Leg.A]);

    [Fact]
    public void A_three_pole_breaker_on_two_legs_puts_its_load_between_them() =>
        Place(PanelSystem.SplitPhase, Sketch.ThreePole(1)).Legs.ShouldBe([Leg.A, Leg.B]);

    [Fact]
    public void A_pole_below_the_last_is_taken_for_the_last() =>
        Place(PanelSystem.SplitPhase, Sketch.TwoPole(1), Across.LineToNeutral, 3).Legs.ShouldBe([Leg.B]);

    [Fact]
    public void A_one_pole_breaker_feeds_line_to_neutral_whatever_is_said() =>
        Place(PanelSystem.SplitPhase, Sketch.OnePole(4)).IsToNeutral.ShouldBeTrue();

    [Theory]
    [InlineData(1, "A-B", Leg.A)]
    [InlineData(3, "B-C", Leg.B)]
    [InlineData(5, "C-A", Leg.C)]
    public void On_three_legs_each_pair_keeps_its_own_sum(int space, string pair, Leg first)
    {
        var placement = Place(PanelSystem.Wye, Sketch.TwoPole(space));
        placement.ToString().ShouldBe(pair);
        placement.Put(900.VA).ToNext[first].ShouldBe(900.VA);
    }

    [Fact]
    public void On_two_legs_there_is_one_pair_whichever_pole_is_on_top()
    {
        Place(PanelSystem.SplitPhase, Sketch.TwoPole(3)).Put(900.VA).ToNext[Leg.A].ShouldBe(900.VA);
        Place(PanelSystem.SplitPhase, Sketch.TwoPole(1)).Put(900.VA).ToNext[Leg.A].ShouldBe(900.VA);
    }

    private static Placement Place(
        PanelSystem system, Circuit circuit, Across across = Across.LineToLine, int pole = 1) =>
        Placement.Of(Sketch.Of(100.VA) with { Across = across, Pole = pole }, circuit, system);
}
