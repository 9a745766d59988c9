using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Merging;

/// <summary>Which breaker is which in two versions. A merge that would have to guess asks, whichever side is ours.</summary>
public class MatchingTests
{
    private const string Saw = "{space: 1, name: Saw, breaker: 20 A, wire: 12 AWG Cu}";
    private const string SawAt15 = "{space: 1, name: Saw, breaker: 15 A, wire: 12 AWG Cu}";
    private const string Bench = "{space: 3, name: Bench outlets, breaker: 20 A, length: 30 ft, loads: [{kind: receptacle, outlets: 4}]}";
    private const string Motor = "{space: 1, name: Saw, breaker: 20 A, loads: [{kind: motor, rating: 1 hp}]}";

    [Theory]
    [InlineData("a breaker of another name takes no breaker size of the old one",
        Saw, "{space: 1, name: Lathe, breaker: 20 A, wire: 12 AWG Cu}", "{space: 1, name: Saw, breaker: 30 A, wire: 10 AWG Cu}")]
    [InlineData("another load under another name takes no breaker size of the old one",
        Bench, "{space: 3, name: Gate opener, breaker: 20 A, loads: [{kind: motor, rating: 1/2 hp}]}",
        "{space: 3, name: Bench outlets, breaker: 15 A, length: 30 ft, loads: [{kind: receptacle, outlets: 4}]}")]
    [InlineData("swapped names without loads",
        Saw + "\n{space: 2, name: Lathe, breaker: 20 A, wire: 12 AWG Cu}",
        "{space: 1, name: Lathe, breaker: 20 A, wire: 12 AWG Cu}\n{space: 2, name: Saw, breaker: 20 A, wire: 12 AWG Cu}",
        SawAt15 + "\n{space: 2, name: Lathe, breaker: 20 A, wire: 12 AWG Cu}")]
    [InlineData("swapped names over their loads",
        Motor + "\n{space: 2, name: Lathe, breaker: 20 A, loads: [{kind: motor, rating: 2 hp}]}",
        "{space: 1, name: Lathe, breaker: 20 A, loads: [{kind: motor, rating: 1 hp}]}\n{space: 2, name: Saw, breaker: 20 A, loads: [{kind: motor, rating: 2 hp}]}",
        "{space: 1, name: Saw, breaker: 15 A, loads: [{kind: motor, rating: 1 hp}]}\n{space: 2, name: Lathe, breaker: 20 A, loads: [{kind: motor, rating: 2 hp}]}")]
    [InlineData("a circuit with an id, replaced by one without",
        "{id: c4, space: 12, name: Sump, breaker: 15 A, loads: [{kind: motor, rating: 1/3 hp}]}",
        "{space: 12, name: Gate, breaker: 15 A, loads: [{kind: motor, rating: 1/2 hp}]}",
        "{id: c4, space: 10, name: Sump, breaker: 15 A, loads: [{kind: motor, rating: 1/3 hp}]}")]
    [InlineData("a circuit without an id, replaced by one with an id",
        "{space: 12, name: Sump, breaker: 15 A, loads: [{kind: motor, rating: 1/3 hp}]}",
        "{id: gate, space: 12, name: Gate, breaker: 15 A, loads: [{kind: motor, rating: 1/2 hp}]}",
        "{space: 10, name: Sump, breaker: 15 A, loads: [{kind: motor, rating: 1/3 hp}]}")]
    [InlineData("a length that was measured for the old breaker",
        "{space: 12, name: Sump, breaker: 15 A}", "{space: 12, name: Gate, breaker: 20 A}", "{space: 12, name: Sump, breaker: 15 A, length: 60 ft}")]
    [InlineData("spares that share their name",
        "{space: 5, name: Spare, breaker: 20 A}\n{space: 7, name: Spare, breaker: 15 A}",
        "{space: 5, name: Spare, breaker: 15 A}\n{space: 7, name: Spare, breaker: 20 A}",
        "{space: 5, name: Spare, breaker: 20 A, wire: 12 AWG Cu}\n{space: 7, name: Spare, breaker: 15 A}")]
    [InlineData("moved with its loads under a new name on one side, removed on the other",
        Motor, "{space: 7, name: Table saw, breaker: 20 A, loads: [{kind: motor, rating: 1 hp}]}", "")]
    [InlineData("moved to two spaces under two new names",
        Motor, "{space: 7, name: Table saw, breaker: 20 A, loads: [{kind: motor, rating: 1 hp}]}",
        "{space: 9, name: Band saw, breaker: 20 A, loads: [{kind: motor, rating: 1 hp}]}")]
    [InlineData("one name added in two spaces",
        Saw, Saw + "\n{space: 5, name: Freezer, breaker: 15 A}", Saw + "\n{space: 7, name: Freezer, breaker: 20 A}")]
    [InlineData("one circuit added on both sides, two-pole on one",
        Saw, Saw + "\n{id: kiln, space: 5, name: Kiln, breaker: 30 A}", Saw + "\n{id: kiln, space: 5, name: Kiln, breaker: 30 A, poles: 2}")]
    [InlineData("the running power measured on a motor that the other side replaced",
        Motor, "{space: 1, name: Saw, breaker: 20 A, loads: [{kind: motor, rating: 2 hp}]}",
        "{space: 1, name: Saw, breaker: 20 A, loads: [{kind: motor, rating: 1 hp, running: 700 W}]}")]
    [InlineData("a load that both sides replaced",
        Motor, "{space: 1, name: Saw, breaker: 20 A, loads: [{kind: lighting, rating: 100 W}]}",
        "{space: 1, name: Saw, breaker: 20 A, loads: [{kind: appliance, rating: 1 kW}]}")]
    public void Where_the_file_does_not_tell_who_is_who_the_merge_asks(string claim, string was, string one, string other)
    {
        foreach (var merge in BothWays(was, one, other)) merge.Conflicts.ShouldNotBeEmpty(claim);
    }

    [Theory]
    [InlineData("name and space", Saw, "{space: 1, name: Saw, breaker: 20 A, wire: 10 AWG Cu}", SawAt15,
        "{space: 1, name: Saw, breaker: 15 A, wire: 10 AWG Cu}")]
    [InlineData("loads and space, under a new name", Motor, "{space: 1, name: Table saw, breaker: 20 A, loads: [{kind: motor, rating: 1 hp}]}",
        "{space: 1, name: Saw, breaker: 15 A, loads: [{kind: motor, rating: 1 hp}]}",
        "{space: 1, name: Table saw, breaker: 15 A, loads: [{kind: motor, rating: 1 hp}]}")]
    [InlineData("name and space, with an id on one side", Saw, "{id: saw, space: 1, name: Saw, breaker: 20 A, wire: 12 AWG Cu}", SawAt15,
        "{id: saw, space: 1, name: Saw, breaker: 15 A, wire: 12 AWG Cu}")]
    [InlineData("name and loads, moved out of a space that another took", Motor,
        "{space: 1, name: Lathe, breaker: 15 A}\n{space: 7, name: Saw, breaker: 20 A, loads: [{kind: motor, rating: 1 hp}]}",
        "{space: 1, name: Saw, breaker: 25 A, loads: [{kind: motor, rating: 1 hp}]}",
        "{space: 1, name: Lathe, breaker: 15 A}\n{space: 7, name: Saw, breaker: 25 A, loads: [{kind: motor, rating: 1 hp}]}")]
    [InlineData("the name alone, with nothing else in either space", Saw, "{space: 7, name: Saw, breaker: 25 A, wire: 12 AWG Cu}",
        "{space: 1, name: Saw, breaker: 20 A, wire: 10 AWG Cu}", "{space: 7, name: Saw, breaker: 25 A, wire: 10 AWG Cu}")]
    [InlineData("replaced on one side, left alone on the other", Saw + "\n" + Bench, "{space: 1, name: Lathe, breaker: 30 A}\n" + Bench,
        Saw + "\n{space: 3, name: Bench outlets, breaker: 20 A, length: 35 ft, loads: [{kind: receptacle, outlets: 4}]}",
        "{space: 1, name: Lathe, breaker: 30 A}\n{space: 3, name: Bench outlets, breaker: 20 A, length: 35 ft, loads: [{kind: receptacle, outlets: 4}]}")]
    [InlineData("replaced by the same on both sides", Saw + "\n" + Bench, "{space: 1, name: Lathe, breaker: 30 A}\n" + Bench,
        "{space: 1, name: Lathe, breaker: 30 A}\n{space: 3, name: Bench outlets, breaker: 15 A, length: 30 ft, loads: [{kind: receptacle, outlets: 4}]}",
        "{space: 1, name: Lathe, breaker: 30 A}\n{space: 3, name: Bench outlets, breaker: 15 A, length: 30 ft, loads: [{kind: receptacle, outlets: 4}]}")]
    public void What_can_be_recognized_is_merged(string by, string was, string one, string other, string merged)
    {
        foreach (var merge in BothWays(was, one, other))
        {
            merge.Conflicts.Select(conflict => $"{conflict}").ShouldBe([], by);
            Keys(merge.Settled().Text).ShouldBe(Keys(File(merged)), by);
        }
    }

    [Fact]
    public void A_question_shows_both_breakers_and_what_was_there_and_each_answer_is_one_side()
    {
        var (ours, theirs) = (File("{space: 1, name: Lathe, breaker: 20 A}"), File(SawAt15));
        var merge = Merge(File(Saw), ours, theirs);
        var conflict = merge.Conflicts.ShouldHaveSingleItem();
        $"{conflict}".ShouldBe("Lathe (space 1): both sides changed what may be this circuit, and the file does not tell whether it is");
        (conflict.Ancestor, conflict.Ours, conflict.Theirs).ShouldBe(
            ($"  - {Saw}\n", "  - {space: 1, name: Lathe, breaker: 20 A}\n", $"  - {SawAt15}\n"));
        merge.Settled(MergeSide.Ours).Text.ShouldBe(ours);
        merge.Settled(MergeSide.Theirs).Text.ShouldBe(theirs);
    }

    // A key that the other side added first stands last in ours.
    private static string[] Keys(string text) =>
        [.. text.Split('\n').SelectMany(line => line.Split('{', ',', '}').Select(key => key.Trim()).Order(StringComparer.Ordinal))];

    private static IEnumerable<ScheduleMerge> BothWays(string was, string one, string other)
    {
        yield return Merge(File(was), File(one), File(other));
        yield return Merge(File(was), File(other), File(one));
    }

    private static ScheduleMerge Merge(string was, string ours, string theirs)
    {
        var merge = ScheduleMerge.Of(SourceText.FromString(was), SourceText.FromString(ours), SourceText.FromString(theirs));
        merge.WhyNot.ShouldBeNull();
        return merge;
    }

    private static string File(string circuits) =>
        "schedule: 1\npanel:\n  system: 120/240 V 1ph 3W\n  spaces: 12\ncircuits:\n"
        + string.Concat(circuits.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(circuit => $"  - {circuit}\n"))
        + (circuits.Length == 0 ? "  []\n" : "");
}
