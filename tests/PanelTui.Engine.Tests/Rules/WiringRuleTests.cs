using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>Shared neutrals, handle ties, and circuits that came from another panel.</summary>
public class WiringRuleTests
{
    /// <summary>
    /// Two circuits of 15 A put 30 A on a neutral that they share on one leg, as a question-and-answer page reckons
    /// (receptacle102.rssing.com, article 4).
    /// </summary>
    [Fact]
    public void Two_circuits_of_15_A_on_one_leg_can_put_30_A_on_their_neutral() =>
        Shared(1, 5).ShouldBreak(
            "shared-neutral-on-one-leg",
            "Circuit 1 at space 1 and Circuit 5 at space 5 share a neutral and sit on leg A: the neutral can carry 15 A + 15 A = 30 A.");

    /// <summary>One name more takes no more room than "1 more".</summary>
    [Theory]
    [InlineData(4, "Circuit 3 at space 3, Circuit 5 at space 5, Circuit 7 at space 7 and Circuit 9 at space 9")]
    [InlineData(5, "Circuit 3 at space 3, Circuit 5 at space 5, Circuit 7 at space 7 and 2 more")]
    public void Circuits_without_a_wire_are_named_up_to_four(int count, string named)
    {
        var wired = Sketch.OnePole(1, Sketch.Of(10.A)) with { Wire = new Conductor(ConductorSize.Awg(12), ConductorMetal.Copper) };
        var bare = Enumerable.Range(1, count).Select(number => Sketch.OnePole(1 + (2 * number), Sketch.Of(10.A)));
        Judge.Findings(Sketch.Of([wired, .. bare]), "conductor-not-stated").ShouldHaveSingleItem()
            .Message.ShouldStartWith($"{count} of {count + 1} circuits have no wire written down: {named}.");
    }

    [Theory]
    [InlineData(1, 3)]
    [InlineData(2, 4)]
    [InlineData(1, 4)]
    public void On_two_legs_they_cancel(int first, int second) =>
        Shared(first, second).ShouldPass("shared-neutral-on-one-leg");

    [Fact]
    public void Side_by_side_is_one_leg() =>
        Judge.Findings(Shared(1, 2), "shared-neutral-on-one-leg").ShouldHaveSingleItem();

    [Fact]
    public void One_tandem_is_one_leg_and_says_so() =>
        Shared(new SpaceNumber(17, SpaceHalf.A), new SpaceNumber(17, SpaceHalf.B)).ShouldBreak(
            "shared-neutral-on-one-leg",
            "Circuit 17 at space 17a and Circuit 17 at space 17b share a neutral and sit on leg A, the halves of one tandem: "
            + "the neutral can carry 15 A + 15 A = 30 A.");

    [Fact]
    public void A_tandem_half_alone_is_fine() =>
        Sketch.Of(At(new SpaceNumber(17, SpaceHalf.A))).Assessed().Findings
            .ShouldNotContain(finding => finding.Rule.StartsWith("shared-neutral", StringComparison.Ordinal));

    /// <summary>
    /// 710.15(C) as a copy of Article 710 prints it (thenecwiki.com): no multiwire circuits on one 120 V supply. The same page of
    /// questions has 30 A on the neutral of two circuits of 15 A.
    /// </summary>
    [Fact]
    public void On_one_120_V_unit_a_shared_neutral_carries_both_legs() =>
        InPhase(Shared(1, 3)).ShouldBreak(
            "shared-neutral-on-one-leg-source",
            "Circuit 1 at space 1 and Circuit 3 at space 3 share a neutral; on one 120 V unit the currents add on it, up to "
            + "15 A + 15 A = 30 A.");

    [Fact]
    public void On_two_units_180_degrees_apart_it_does_not() =>
        (Shared(1, 3) with { Source = new StandbySource { Kind = SourceKind.Inverters, Arrangement = SourceArrangement.Split } })
            .ShouldPass("shared-neutral-on-one-leg-source");

    /// <summary>The text as copied at thenecwiki.com says less than: 60 A on a bar of 100 A will do, 100 A will not.</summary>
    [Theory]
    [InlineData(60, true)]
    [InlineData(99, true)]
    [InlineData(100, false)]
    public void One_120_V_unit_is_rated_for_less_than_the_neutral_bar(int source, bool passes)
    {
        var schedule = InPhase(Sketch.Of(), source.A);
        var found = Judge.Findings(
            schedule with { Panel = schedule.Panel with { Bus = 100.A } }, "one-leg-source-at-neutral-bus");
        found.Any().ShouldBe(!passes);
    }

    [Theory]
    [InlineData(1, 3, true)]
    [InlineData(1, 7, false)]
    [InlineData(1, 2, false)]
    [InlineData(2, 4, true)]
    public void A_tie_reaches_the_next_breaker_on_the_same_side(int first, int second, bool reaches) =>
        Judge.Findings(Shared(first, second), "shared-neutral-without-tie").Any().ShouldBe(!reaches);

    [Theory]
    [InlineData(true, 0)]
    [InlineData(false, 1)]
    public void A_neutral_left_behind_is_an_error(bool moved, int errors) =>
        Judge.Findings(Sketch.Of(Sketch.OnePole(1) with { MovedFrom = "barn", NeutralMoved = moved }), "moved-circuit-without-its-neutral")
            .Count().ShouldBe(errors);

    private static Schedule Shared(int first, int second) => Shared(new SpaceNumber(first), new SpaceNumber(second));

    private static Schedule Shared(SpaceNumber first, SpaceNumber second) => Sketch.Of(
        At(first) with { Multiwire = "bench", Tied = true }, At(second) with { Multiwire = "bench", Tied = true });

    private static Circuit At(SpaceNumber space) =>
        Sketch.OnePole(space.Number) with { Space = space, Breaker = new Breaker(15.A) };

    private static Schedule InPhase(Schedule schedule, Amperes? device = null) => schedule with
    {
        Source = new StandbySource { Kind = SourceKind.Inverters, Arrangement = SourceArrangement.InPhase, Ocpd = device },
    };
}
