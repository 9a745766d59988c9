using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>Breakers and the spaces they take.</summary>
public class SpaceRuleTests
{
    [Fact]
    public void Two_breakers_cannot_take_one_space() =>
        Sketch.Of(Sketch.TwoPole(1), Sketch.OnePole(3)).ShouldBreak(
            "space-taken-twice", "Circuit 3 at space 3 takes space 3, which Circuit 1 at space 1 takes already.");

    [Fact]
    public void Two_poles_of_one_clash_are_one_finding() =>
        Sketch.Of(Sketch.TwoPole(1), Sketch.TwoPole(1)).ShouldBreak(
            "space-taken-twice", "Circuit 1 at space 1 takes space 1 and 3, which Circuit 1 at space 1 takes already.");

    [Fact]
    public void A_breaker_over_two_others_is_held_against_each() =>
        Judge.Findings(Sketch.Of(Sketch.OnePole(1), Sketch.OnePole(3), Sketch.TwoPole(1)), "space-taken-twice")
            .Count().ShouldBe(2);

    [Fact]
    public void Neighbours_do_not_clash() =>
        Sketch.Of(Sketch.TwoPole(1), Sketch.OnePole(2), Sketch.OnePole(5)).ShouldPass("space-taken-twice");

    [Fact]
    public void The_two_halves_of_a_tandem_do_not_clash() =>
        Sketch.Of(At(17, SpaceHalf.A), At(17, SpaceHalf.B)).ShouldPass("space-taken-twice");

    [Theory]
    [InlineData(SpaceHalf.A, SpaceHalf.A)]
    [InlineData(SpaceHalf.Whole, SpaceHalf.B)]
    [InlineData(SpaceHalf.B, SpaceHalf.Whole)]
    public void A_half_clashes_with_itself_and_with_the_whole_space(SpaceHalf first, SpaceHalf second) =>
        Judge.Findings(Sketch.Of(At(17, first), At(17, second)), "space-taken-twice").ShouldHaveSingleItem();

    [Fact]
    public void A_two_pole_past_the_last_space_is_reported() =>
        Sketch.Of(Sketch.TwoPole(41)).ShouldBreak(
            "breaker-past-last-space", "Circuit 41 at space 41 takes space 43; the panel has 42 spaces.");

    [Fact]
    public void A_breaker_in_the_last_space_is_fine() =>
        Sketch.Of(Sketch.TwoPole(39), Sketch.OnePole(42)).ShouldPass("breaker-past-last-space");

    [Fact]
    public void A_three_pole_has_no_place_on_two_legs() =>
        Sketch.Of(Sketch.ThreePole(1)).ShouldBreak(
            "more-poles-than-legs", "Circuit 1 at space 1 has 3 poles; 120/240 V 1ph 3W has 2 legs.");

    [Fact]
    public void A_two_pole_has_no_place_on_one_leg() =>
        Sketch.Of(PanelSystem.OneLeg, Sketch.TwoPole(1)).ShouldBreak(
            "more-poles-than-legs", "Circuit 1 at space 1 has 2 poles; 120 V 1ph 2W has 1 leg.");

    [Fact]
    public void As_many_poles_as_legs_are_fine() =>
        Sketch.Of(PanelSystem.Wye, Sketch.ThreePole(1)).ShouldPass("more-poles-than-legs");

    [Fact]
    public void A_tandem_half_needs_a_space_marked_for_it() =>
        Tandems([18, 19], At(17, SpaceHalf.A)).ShouldBreak(
            "tandem-not-listed-here",
            "Circuit 17 at space 17a is a tandem half at 17a; spaces marked for tandem breakers are 18, 19.");

    [Fact]
    public void Where_no_space_is_marked_no_tandem_may_sit() =>
        Tandems([], At(17, SpaceHalf.B)).ShouldBreak(
            "tandem-not-listed-here",
            "Circuit 17 at space 17b is a tandem half at 17b; no space of the panel is marked for tandem breakers.");

    [Fact]
    public void A_tandem_half_in_a_marked_space_is_fine() =>
        Tandems([17], At(17, SpaceHalf.A)).ShouldPass("tandem-not-listed-here");

    [Fact]
    public void A_whole_breaker_may_sit_anywhere() =>
        Tandems([], Sketch.OnePole(17)).ShouldPass("tandem-not-listed-here");

    private static Circuit At(int space, SpaceHalf half) =>
        Sketch.OnePole(space) with { Space = new SpaceNumber(space, half) };

    private static Schedule Tandems(int[] spaces, params ReadOnlySpan<Circuit> circuits)
    {
        var schedule = Sketch.Of(circuits);
        return schedule with { Panel = schedule.Panel with { TandemSpaces = [.. spaces] } };
    }
}
