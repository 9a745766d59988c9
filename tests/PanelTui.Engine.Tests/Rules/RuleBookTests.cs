using System.Text.RegularExpressions;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules;
using PanelTui.Engine.Rules.Branches;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>The list of rules is complete, and its words hold what they promise.</summary>
public partial class RuleBookTests
{
    [Fact]
    public void The_list_forgets_no_rule() =>
        typeof(RuleBook).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(CodeRule)) && !type.IsAbstract)
            .ShouldBe(RuleBook.All.Select(rule => rule.GetType()), ignoreOrder: true);

    [Fact]
    public void Names_are_unique_and_follow_from_the_type() =>
        RuleBook.All.Select(rule => rule.Name).ShouldBe(RuleBook.All.Select(rule => Kebab(rule.GetType().Name)));

    [Fact]
    public void Each_rule_says_in_one_sentence_what_it_asks() =>
        RuleBook.All.Select(rule => rule.Summary).AtLeastOne().ShouldAllBe(summary => OneSentence().IsMatch(summary));

    [Fact]
    public void Each_rule_says_why_it_matters_and_what_to_do_and_never_that_something_is_safe()
    {
        foreach (var rule in RuleBook.All.AtLeastOne())
        {
            Sentences().IsMatch(rule.Why).ShouldBeTrue($"{rule.Name}: {rule.Why}");
            Sentences().IsMatch(rule.Advice).ShouldBeTrue($"{rule.Name}: {rule.Advice}");
            $"{rule.Name} {rule.Summary} {rule.Why} {rule.Advice}".ShouldNotContain("safe", Case.Insensitive);
        }
    }

    [Fact]
    public void A_rule_is_found_by_its_name()
    {
        RuleBook.Find("gfci-missing").ShouldBeOfType<GfciMissingRule>();
        RuleBook.Find("gfci").ShouldBeNull();
    }

    [Fact]
    public void Findings_come_with_errors_first_and_then_by_space()
    {
        var schedule = Sketch.Of(
            Sketch.OnePole(5, Sketch.Of(5000.W)) with { Name = "Kiln", Breaker = new Breaker(22.A) },
            Sketch.OnePole(3) with { Name = "Lathe", Breaker = new Breaker(22.A) });
        var source = new StandbySource { Kind = SourceKind.Generator, Continuous = 4000.W };
        var assessed = (schedule with { Source = source, Panel = schedule.Panel with { NeutralBonded = true } })
            .With(new Scenario { Name = "All", RunsAll = true }).Assessed();
        assessed.Findings.Select(finding => $"{finding.Severity} {string.Join(' ', finding.Spaces)}").ShouldBe(
            ["Error ", "Error 3", "Error 5", "Warning 5", "Warning 5"]);
    }

    [Fact]
    public void A_rule_without_a_section_cites_common_practice() =>
        Judge.Findings(Sketch.Of(Sketch.OnePole(1), Sketch.OnePole(1)), "space-taken-twice").Single()
            .Cite.ToString().ShouldBe("common practice, no source");

    private static string Kebab(string type) =>
        Capital().Replace(type[..^"Rule".Length], "-$0")[1..].ToLowerInvariant();

    [GeneratedRegex("[A-Z]|(?<![0-9])[0-9]")]
    private static partial Regex Capital();

    [GeneratedRegex(@"^[A-Z][^.]+\.$")]
    private static partial Regex OneSentence();

    [GeneratedRegex(@"^[A-Z].+\.$")]
    private static partial Regex Sentences();
}
