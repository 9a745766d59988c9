using PanelTui.Engine.Rules;

namespace PanelTui.Tests.CommandLine;

public class RulesTests
{
    [Fact]
    public void All_rules_are_listed_with_what_they_ask()
    {
        var ran = Ran.Of("rules");
        ran.Code.ShouldBe(0);
        foreach (var rule in RuleBook.All.AtLeastOne()) ran.Out.ShouldContain(rule.Name);
        ran.Out.Lines().ShouldAllBe(line => line.Length <= 80);
    }

    [Fact]
    public void One_rule_is_explained_with_its_section() =>
        Ran.Of("rules", "shared-neutral-without-tie").ShouldBe(new Ran(0, """
            shared-neutral-without-tie: error
              Breakers that share a neutral are one breaker of several poles, or their
              handles are tied.

            Why
              With one breaker off the other still feeds the shared neutral: opening it
              puts up to 240 V on 120 V loads, and on the hand.
            What to do
              Look for a handle tie or put in a two-pole breaker; a tie needs neighbouring
              spaces. Write tied: yes once it is there.
            Rests on
              NEC 2017, 2020, 2023: 210.4(B); seen in a published source

            """, ""));

    [Fact]
    public void A_rule_that_is_not_there_is_guessed()
    {
        var ran = Ran.Of("rules", "gfci-mising");
        ran.Code.ShouldBe(2);
        ran.Out.ShouldBeEmpty();
        ran.Error.ShouldContain("there is no rule gfci-mising; did you mean gfci-missing?");
    }
}
