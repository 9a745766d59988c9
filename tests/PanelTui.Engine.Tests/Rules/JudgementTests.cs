using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>A schedule may let a finding stand for a reason; nothing is lost by that.</summary>
public class JudgementTests
{
    private const string Rule = "space-taken-twice";

    private static readonly Schedule Clash = Sketch.Of(Sketch.TwoPole(1), Sketch.OnePole(3), Sketch.OnePole(3));

    [Fact]
    public void Without_acceptances_every_finding_stands()
    {
        Clash.Assessed().Accepted.ShouldBeEmpty();
        Judge.Findings(Clash, Rule).ShouldNotBeEmpty();
    }

    [Fact]
    public void Open_and_accepted_are_all_there_is()
    {
        var assessed = Accepting(Rule).Assessed();
        assessed.Findings.Concat(assessed.Accepted.Select(one => one.Finding)).Select(finding => finding.Message)
            .ShouldBe(Clash.Assessed().Findings.Select(finding => finding.Message), ignoreOrder: true);
        assessed.Findings.ShouldNotContain(finding => finding.Rule == Rule);
        assessed.Accepted.AtLeastOne().ShouldAllBe(one => one.Finding.Rule == Rule && one.Because == "A drawing");
        assessed.Judgement.Idle.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("3", 0)]
    [InlineData("3a", 0)]
    [InlineData("5", 1)]
    public void A_space_accepts_the_findings_that_are_about_it(string space, int idle)
    {
        SpaceNumber.TryParse(space, out var number).ShouldBeTrue();
        Accepting(Rule, number).Assessed().Judgement.Idle.Length.ShouldBe(idle);
    }

    [Fact]
    public void An_acceptance_of_another_rule_is_idle() =>
        Accepting("rating-not-standard").Assessed().Judgement.Idle.ShouldHaveSingleItem().Rule.ShouldBe("rating-not-standard");

    [Fact]
    public void A_finding_about_no_space_is_accepted_without_one()
    {
        var bonded = Clash with { Panel = Clash.Panel with { NeutralBonded = true } };
        var accepted = bonded with { Accepted = [Acceptance("neutral-bonded-in-subpanel")] };
        accepted.Assessed().Accepted.ShouldHaveSingleItem();
        var misplaced = bonded with { Accepted = [Acceptance("neutral-bonded-in-subpanel", new SpaceNumber(1))] };
        misplaced.Assessed().Accepted.ShouldBeEmpty();
    }

    private static Schedule Accepting(string rule, SpaceNumber? space = null) =>
        Clash with { Accepted = [Acceptance(rule, space)] };

    private static Acceptance Acceptance(string rule, SpaceNumber? space = null) =>
        new() { Ordinal = 0, Rule = rule, Space = space, Because = "A drawing" };
}
