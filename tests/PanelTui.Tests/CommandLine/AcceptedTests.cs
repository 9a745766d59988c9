using System.Text.Json;

namespace PanelTui.Tests.CommandLine;

/// <summary>Findings that a schedule accepts are listed apart, with the reason, and never hidden.</summary>
public class AcceptedTests
{
    /// <summary>Two circuits in one space, at 1.</summary>
    private static readonly string Clash = Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal);

    [Fact]
    public void An_accepted_error_is_told_with_its_reason_and_does_not_fail()
    {
        var ran = Ran.With(Accepting("{rule: space-taken-twice, space: 1, because: A drawing of both variants}"), "check", "-");
        ran.Code.ShouldBe(0);
        ran.Out.ShouldContain("standard input:17:12: accepted error: Bench receptacles at space 1 takes space 1");
        ran.Out.ShouldContain("    because: A drawing of both variants\n");
        ran.Out.ShouldEndWith("standard input: no findings; what the file does not state was not checked; 1 accepted\n");
    }

    [Fact]
    public void Without_a_space_every_finding_of_the_rule_is_accepted() =>
        Ran.With(Accepting("{rule: space-taken-twice, because: A drawing of both variants}"), "check", "-").Code.ShouldBe(0);

    [Fact]
    public void At_another_space_the_finding_stands_and_the_entry_is_noted()
    {
        var ran = Ran.With(Accepting("{rule: space-taken-twice, space: 2, because: A drawing}"), "check", "-");
        ran.Code.ShouldBe(1);
        ran.Out.ShouldContain(
            "standard input:30:12: note: accepted names space-taken-twice at space 2, but there is no such finding; "
            + "take the entry away, or check its rule and space [idle-acceptance]");
    }

    [Fact]
    public void A_rule_that_is_not_there_is_noted_once_and_guessed()
    {
        var ran = Ran.With(Accepting("{rule: space-taken-twise, because: A drawing}"), "check", "-");
        ran.Code.ShouldBe(1);
        ran.Out.ShouldContain(
            "note: rule names \"space-taken-twise\", which is no rule of this program; did you mean space-taken-twice? [unknown-rule]");
        ran.Out.ShouldNotContain("idle-acceptance");
    }

    [Fact]
    public void Without_a_reason_nothing_is_accepted() =>
        Ran.With(Accepting("{rule: space-taken-twice}"), "check", "-").Out.ShouldContain("this acceptance has no because; give one");

    [Fact]
    public void Nothing_is_not_a_reason() =>
        Ran.With(Accepting("{rule: space-taken-twice, because: \"\"}"), "check", "-").Out
            .ShouldContain("because is empty; write a reason in words [bad-value]");

    [Theory]
    [InlineData("check")]
    [InlineData("calc")]
    public void Json_lists_them_apart_with_the_reason(string verb)
    {
        var ran = Ran.With(Accepting("{rule: space-taken-twice, because: A drawing}"), verb, "-", "--json");
        using var json = JsonDocument.Parse(ran.Out);
        json.RootElement.GetProperty("findings").GetArrayLength().ShouldBe(0);
        var accepted = json.RootElement.GetProperty("accepted").EnumerateArray().ShouldHaveSingleItem();
        accepted.GetProperty("rule").GetString().ShouldBe("space-taken-twice");
        accepted.GetProperty("because").GetString().ShouldBe("A drawing");
    }

    private static string Accepting(string entry) => $"{Clash}accepted:\n  - {entry}\n";
}
