using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules.Standby;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>Bonds, signs, and legs that carry unlike.</summary>
public class SourceRuleTests
{
    /// <summary>
    /// A set is a system of its own only where the transfer equipment switches the neutral: so a question-and-answer column
    /// (ecmweb.com) and a trade forum (forums.mikeholt.com, thread 102716).
    /// </summary>
    [Theory]
    [InlineData(false, SourceNeutral.Floating, null)]
    [InlineData(false, SourceNeutral.Bonded, "neutral-bonded-twice")]
    [InlineData(true, SourceNeutral.Floating, "neutral-bonded-nowhere")]
    [InlineData(true, SourceNeutral.Bonded, null)]
    public void The_neutral_is_bonded_once(bool switches, SourceNeutral neutral, string? rule)
    {
        var schedule = Fed(new StandbySource { Kind = SourceKind.Generator, Neutral = neutral }, switches);
        schedule.Assessed().Findings.Select(finding => finding.Rule)
            .Where(name => name.StartsWith("neutral-bond", StringComparison.Ordinal))
            .ShouldBe(rule is null ? [] : [rule]);
    }

    /// <summary>One sign a kind of transfer equipment, as a training page on 702.7(C) has them.</summary>
    [Theory]
    [InlineData(false, SignTexts.NotSeparatelyDerived)]
    [InlineData(true, SignTexts.SeparatelyDerived)]
    public void The_sign_at_the_inlet_follows_the_transfer_equipment(bool switches, string sign)
    {
        var source = new StandbySource { Kind = SourceKind.Generator, Outlet = "L14-30" };
        Judge.Findings(Fed(source, switches), "sign-at-inlet").ShouldHaveSingleItem().Message.ShouldContain(sign);
    }

    /// <summary>
    /// 60 A and 48 A: the difference of 12 A is 11 % of the total of 108 A, which a trade forum's 25 % for generator sets lets pass
    /// (steelsoldiers.com, thread 97953). On two legs that share is what imbalance says here.
    /// </summary>
    [Fact]
    public void Twelve_amperes_between_60_and_48_A_pass() => Legs(60, 48).ShouldPass("legs-uneven");

    [Fact]
    public void The_scenario_that_is_most_uneven_is_told_and_no_other() =>
        Legs(60, 20).With(
            new Scenario { Name = "All", RunsAll = true }, new Scenario { Name = "Heavy leg", Running = ["c1"] }).ShouldBreak(
            "legs-uneven", $"Heavy leg runs 7200 W on leg A and 0 W on leg B: 100.0 % off their mean, where {LegsUnevenRule.Most} is the most.");

    [Fact]
    public void Without_a_stated_limit_no_leg_is_heavy() =>
        (Legs(60, 20) with { Source = new StandbySource { Kind = SourceKind.Generator } }).ShouldPass("legs-uneven");

    [Fact]
    public void A_scenario_may_name_a_circuit_that_is_else_off_standby()
    {
        var off = Sketch.OnePole(1, Sketch.Of(600.W)) with { Standby = false };
        var assessed = Sketch.Of(off).With(new Scenario { Name = "Night", Running = ["c1"] }).Assessed();
        assessed.Scenarios[0].Running.ShouldBe(600.W);
        assessed.Findings.Select(finding => finding.Rule).ShouldBe(["directory-text-vague"]);
    }

    private static Schedule Legs(decimal onA, decimal onB) =>
        (Sketch.Of(Sketch.OnePole(1, Sketch.Of(onA.A)), Sketch.OnePole(3, Sketch.Of(onB.A))) with
        {
            Source = new StandbySource { Kind = SourceKind.Generator, Continuous = 14_400.W },
        }).With(new Scenario { Name = "Night", RunsAll = true });

    private static Schedule Fed(StandbySource source, bool switchesNeutral) => Sketch.Of() with
    {
        Source = source,
        Transfer = new TransferEquipment { SwitchesNeutral = switchesNeutral },
    };
}
