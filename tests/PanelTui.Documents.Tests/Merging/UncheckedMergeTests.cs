using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Merging;

/// <summary>What cannot be checked is marked: a value that cannot be read, or a reference that the merge would turn to something else.</summary>
public class UncheckedMergeTests
{
    private const string Saw = "{id: saw, space: 1, name: Saw, breaker: 15 A, multiwire: kitchen, loads: [{kind: lighting, rating: 100 W, group: g}]}";
    private const string Fan = "{id: fan, space: 4, name: Fan, breaker: 15 A, multiwire: kitchen, loads: [{kind: motor, rating: 1 hp, group: g}]}";

    public static TheoryData<string, string> Unreadable => new()
    {
        { "Saw, breaker: 15 A", "Saw, breaker: 15" },
        { "kind: lighting", "kind: heating" },
        { "space: 1", "space: one" },
        { "rating: 100 W", "rating: 100" },
    };

    [Theory]
    [MemberData(nameof(Unreadable))]
    public void A_value_that_cannot_be_read_elsewhere_does_not_let_two_breakers_into_one_space(string right, string wrong)
    {
        var was = File([Saw, Fan]).Replace(right, wrong, StringComparison.Ordinal);
        foreach (var merge in BothWays(was, Added(was, "{space: 3, name: Gate, breaker: 20 A}"), Added(was, "{space: 3, name: Pump, breaker: 30 A, poles: 2}")))
        {
            var conflict = merge.Conflicts.ShouldHaveSingleItem();
            $"{conflict}".ShouldContain("the merge cannot be checked");
            $"{conflict}".ShouldContain("line 6");
        }
    }

    [Theory]
    [InlineData("spaces: 12", "spaces: 8", "{space: 9, name: Gate, breaker: 20 A}")]
    [InlineData("space: 4", "space: 7", "{space: 7, name: Gate, breaker: 20 A}")]
    [InlineData("space: 4, name: Fan, breaker: 15 A", "space: 4, name: Fan, breaker: 15 A, poles: 2", "{space: 6, name: Gate, breaker: 20 A}")]
    [InlineData("id: fan", "id: gate", "{id: gate, space: 6, name: Gate, breaker: 20 A}")]
    public void Whatever_the_other_side_did_is_asked_for_while_a_value_cannot_be_read(string old, string now, string added)
    {
        foreach (var breaker in new[] { "Saw, breaker: 15 A", "Saw, breaker: 15" })
        {
            var was = File([Saw, Fan]).Replace("Saw, breaker: 15 A", breaker, StringComparison.Ordinal);
            foreach (var merge in BothWays(was, was.Replace(old, now, StringComparison.Ordinal), Added(was, added))) merge.Conflicts.ShouldNotBeEmpty(breaker);
        }
    }

    [Fact]
    public void A_value_that_one_side_broke_or_put_right_is_marked_with_what_the_other_side_did()
    {
        var right = File([Saw, Fan]);
        var wrong = right.Replace("Saw, breaker: 15 A", "Saw, breaker: 15", StringComparison.Ordinal);
        var noted = right.Replace("spaces: 12", "spaces: 16", StringComparison.Ordinal);
        foreach (var merge in BothWays(right, wrong, noted)) merge.IsClean.ShouldBeFalse();
        foreach (var merge in BothWays(wrong, right, wrong.Replace("spaces: 12", "spaces: 16", StringComparison.Ordinal))) merge.IsClean.ShouldBeFalse();
    }

    [Fact]
    public void What_only_one_side_changed_needs_no_check()
    {
        var was = File([Saw, Fan]).Replace("Saw, breaker: 15 A", "Saw, breaker: 15", StringComparison.Ordinal);
        var now = Added(was, "{space: 3, name: Gate, breaker: 20 A}");
        foreach (var merge in BothWays(was, was, now).Concat(BothWays(was, now, now))) merge.Settled().Text.ShouldBe(now);
    }

    [Fact]
    public void Each_question_is_about_one_change_of_the_other_side_and_the_answers_give_either_file()
    {
        var was = File([Saw, Fan]).Replace("Saw, breaker: 15 A", "Saw, breaker: 15", StringComparison.Ordinal);
        var theirs = Added(was, "{space: 3, name: Gate, breaker: 20 A}").Replace("spaces: 12", "spaces: 16", StringComparison.Ordinal);
        var ours = was.Replace("name: Fan", "name: Attic fan", StringComparison.Ordinal);
        var merge = Merge(was, ours, theirs);
        merge.Conflicts.Select(conflict => (conflict.Where, conflict.Theirs)).ShouldBe(
            [("panel", "  spaces: 16\n"), ("Gate (space 3)", "  - {space: 3, name: Gate, breaker: 20 A}\n")]);
        merge.Settled(MergeSide.Ours).Text.ShouldBe(ours);
        merge.Settled(MergeSide.Theirs).Text.ShouldBe(theirs.Replace("name: Fan", "name: Attic fan", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_common_version_what_both_sides_added_in_two_ways_is_asked_for()
    {
        var (ours, theirs) = (File([Saw, Fan]), File([Saw, Fan]).Replace("Fan, breaker: 15 A", "Fan, breaker: 20 A", StringComparison.Ordinal));
        foreach (var merge in BothWays("", ours, theirs)) merge.Conflicts.ShouldHaveSingleItem().Where.ShouldBe("Fan (space 4)");
    }

    [Fact]
    public void A_comment_of_the_other_side_is_a_question_of_its_own_while_a_value_cannot_be_read()
    {
        var was = File([Saw, Fan]).Replace("Saw, breaker: 15 A", "Saw, breaker: 15", StringComparison.Ordinal);
        var noted = was.Replace("  - {id: fan", "  # checked\n  - {id: fan", StringComparison.Ordinal);
        var conflict = Merge(was, was.Replace("spaces: 12", "spaces: 16", StringComparison.Ordinal), noted).Conflicts.ShouldHaveSingleItem();
        conflict.Theirs.ShouldBe("  # checked\n");
        conflict.What.ShouldStartWith("comments were changed on the other side");
    }

    [Theory]
    [InlineData("a neutral that one side renamed has a new circuit on the other", "multiwire: kitchen", "multiwire: counter",
        "{space: 6, name: Oven, breaker: 15 A, multiwire: kitchen}")]
    [InlineData("a group that one side dissolved has a new load on the other", ", group: g", "",
        "{space: 6, name: Oven, breaker: 15 A, loads: [{kind: motor, rating: 1 hp, group: g}]}")]
    [InlineData("a circuit that one side removed is in a new scenario of the other", "  - " + Saw + "\n", "",
        "{space: 6, name: Oven, breaker: 15 A}\nscenarios:\n  - {name: Night, running: [saw]}")]
    [InlineData("a finding was accepted for what the other side moved away", "space: 4", "space: 8",
        "{space: 6, name: Oven, breaker: 15 A}\naccepted:\n  - {rule: afci-missing, space: 4, because: seen}")]
    public void A_reference_to_what_the_other_side_took_away_is_asked_for(string claim, string old, string now, string added)
    {
        var was = File([Saw, Fan]);
        foreach (var merge in BothWays(was, was.Replace(old, now, StringComparison.Ordinal), Added(was, added)))
            merge.Conflicts.ShouldNotBeEmpty(claim);
    }

    [Fact]
    public void One_new_name_for_two_neutrals_is_asked_for()
    {
        var was = File([Saw, Fan]);
        foreach (var merge in BothWays(
            was, Added(was, "{space: 5, name: Oven, breaker: 15 A, multiwire: new}"), Added(was, "{space: 7, name: Bath, breaker: 15 A, multiwire: new}")))
            merge.Conflicts.ShouldNotBeEmpty();
    }

    [Fact]
    public void A_scenario_renamed_on_one_side_and_changed_on_the_other_is_one_scenario()
    {
        var was = Added(File([Saw, Fan]), "{space: 6, name: Oven, breaker: 15 A}\nscenarios:\n  - {name: Night, running: [saw]}");
        foreach (var merge in BothWays(
            was, was.Replace("Night", "Overnight", StringComparison.Ordinal), was.Replace("[saw]", "[saw, fan]", StringComparison.Ordinal)))
        {
            merge.Conflicts.ShouldBeEmpty();
            merge.Settled().Text.ShouldContain("{name: Overnight, running: [saw, fan]}");
        }
    }

    [Theory]
    [InlineData("feeder:\n  ocpd: 50 A\n  length: 45 ft\n", "feeder:\n  ocpd: 50 A\n  length: 60 ft\n", "feeder: {ocpd: 60 A, length: 45 ft}\n")]
    [InlineData("scenarios:\n  - {name: Night, running: [saw]}\n", "scenarios:\n  - {name: Night, running: [fan]}\n",
        "scenarios: [{name: Evening, running: [saw]}]\n")]
    public void What_the_other_side_wrote_in_brackets_is_not_taken_for_removed(string was, string ours, string theirs)
    {
        var file = File([Saw, Fan]);
        var merge = Merge(file + was, file + ours, file + theirs);
        merge.Conflicts.ShouldNotBeEmpty();
        merge.Settled(MergeSide.Ours).Text.ShouldBe(file + ours);
        merge.Settled(MergeSide.Theirs).Text.ShouldBe(file + theirs);
    }

    private static IEnumerable<ScheduleMerge> BothWays(string was, string one, string other) => [Merge(was, one, other), Merge(was, other, one)];

    private static ScheduleMerge Merge(string was, string ours, string theirs) =>
        ScheduleMerge.Of(SourceText.FromString(was), SourceText.FromString(ours), SourceText.FromString(theirs));

    private static string Added(string file, string circuit) => $"{file}  - {circuit}\n";

    private static string File(string[] circuits) =>
        $"schedule: 1\npanel:\n  system: 120/240 V 1ph 3W\n  spaces: 12\ncircuits:\n{string.Concat(circuits.Select(circuit => $"  - {circuit}\n"))}";
}
