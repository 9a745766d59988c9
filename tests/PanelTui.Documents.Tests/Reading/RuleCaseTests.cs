using PanelTui.Documents.Reading;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>
/// The rules, in the user's own format: each file of tests/Cases/rules says on which lines which rule must speak.
/// </summary>
public class RuleCaseTests
{
    public static TheoryData<string> Cases => [.. RuleCase.Names];

    public static TheoryData<string> Rules => [.. RuleBook.All.Select(rule => rule.Name)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Each_mark_is_reported_and_nothing_else(string name)
    {
        var rule = new RuleCase(name);
        rule.Reported.ShouldBe(rule.Expected, ignoreOrder: true);
    }

    /// <remarks>With PANELTUI_ACCEPT=1 the sentences are written instead: read them before you keep them.</remarks>
    [Theory]
    [MemberData(nameof(Cases))]
    public void Each_sentence_is_as_it_was_approved(string name)
    {
        var rule = new RuleCase(name);
        var told = string.Concat(rule.Messages);
        if (Environment.GetEnvironmentVariable("PANELTUI_ACCEPT") == "1") File.WriteAllText(rule.ApprovedMessages, told);
        File.Exists(rule.ApprovedMessages).ShouldBeTrue($"PANELTUI_ACCEPT=1 writes what {name} says:\n{told}");
        told.ShouldBe(File.ReadAllText(rule.ApprovedMessages));
        told.ShouldNotContain("safe", Case.Insensitive);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void Each_rule_has_a_case_that_it_reports(string rule) =>
        new RuleCase(rule).Expected.ShouldContain(mark => mark.EndsWith($": {rule}", StringComparison.Ordinal));

    /// <summary>Else a mistyped word would keep a rule silent for ever.</summary>
    [Fact]
    public void Each_place_that_a_rule_knows_is_a_word_of_the_format() =>
        GroundFaultPlaces.OfDwellings.Concat(GroundFaultPlaces.OfOthers).Concat(ArcFaultRooms.All)
            .Select(row => row.Place).ShouldBeSubsetOf(CircuitFields.Places.Allowed);

    [Fact]
    public void Each_rule_that_has_a_place_of_its_own_exists() =>
        FindingPlaces.Keys.Keys.Except(RuleBook.All.Select(rule => rule.Name)).ShouldBeEmpty();
}
