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
        ran.Error.ShouldContain("there is no rule 'gfci-mising', and no rule has that word; did you mean gfci-missing?");
    }

    [Fact]
    public void A_word_lists_every_rule_that_has_it()
    {
        var ran = Ran.Of("rules", "NEUTRAL");
        ran.Code.ShouldBe(0);
        string[] named = [.. RuleBook.All.Select(rule => rule.Name).Where(name => name.Contains("neutral", StringComparison.Ordinal))];
        named.Length.ShouldBeGreaterThan(10);
        foreach (var name in named) ran.Out.ShouldContain(name);
        ran.Out.ShouldNotContain("feeder-drop");
    }

    [Fact]
    public void Of_several_words_a_rule_has_all()
    {
        var one = Names(Ran.Of("rules", "neutral", "--json").Out);
        var both = Names(Ran.Of("rules", "neutral", "bonded", "--json").Out);
        both.ShouldContain("neutral-bonded-twice");
        both.ShouldBeSubsetOf(one);
        both.Length.ShouldBeLessThan(one.Length);
        Ran.Of("rules", "neutral", "zebra").Code.ShouldBe(2);
        Ran.Of("rules", "neutral", "zebra").Error.ShouldStartWith("paneltui: no rule has all of 'neutral', 'zebra'.");
    }

    [Fact]
    public void A_section_lists_the_rules_that_rest_on_it() => Names(Ran.Of("rules", "210.4(B)", "--json").Out).ShouldContain("shared-neutral-without-tie");

    private static string[] Names(string json)
    {
        using var document = System.Text.Json.JsonDocument.Parse(json);
        return [.. document.RootElement.GetProperty("rules").EnumerateArray().Select(rule => rule.GetProperty("rule").GetString()!)];
    }
}
