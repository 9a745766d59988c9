using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.Tests.Presentation;

/// <summary>docs/rules.md says what the rules say.</summary>
public class RulesPageTests
{
    private static readonly string Page = Path.Combine(SourceTree.Root, "docs", "rules.md");

    /// <remarks>With PANELTUI_ACCEPT=1 the page is written instead.</remarks>
    [Fact]
    public void The_page_is_as_the_rules_are() => Golden.Compare(RulesPage.Text, Page, Golden.IsAccepting);

    [Fact]
    public void Each_rule_has_an_entry_with_all_that_there_is_to_say()
    {
        foreach (var rule in RuleBook.All.AtLeastOne())
        {
            var entry = RulesPage.Text.Split($"\n## {rule.Name}\n")[1].Split("\n## ")[0];
            entry.ShouldContain(rule.Summary);
            entry.ShouldContain(rule.Why);
            entry.ShouldContain(rule.Advice);
            entry.ShouldContain("Rests on:");
        }
    }

    [Fact]
    public void A_section_that_moved_stands_under_its_number_of_each_edition() =>
        RuleBasis.Of(RuleBook.Find("automatic-transfer-beyond-source")!).ShouldBe(
            ["NEC 2017, 2020: 702.4(B)(2); 2023: 702.4(A)(2); seen in a published source"]);

    [Fact]
    public void A_section_is_not_told_of_editions_before_it() =>
        RuleBasis.Of(RuleBook.Find("inlet-to-be-outside")!).ShouldBe(["NEC 2023: 702.12(B); seen in a published source"]);

    [Fact]
    public void What_has_no_source_says_so() =>
        RuleBasis.Of(RuleBook.Find("space-taken-twice")!).ShouldBe(["common practice, no source"]);

    [Fact]
    public void What_is_no_rule_is_told_with_its_reason() => RulesPage.Text.ShouldContain("705.12");
}
