using PanelTui.Documents.Comparing;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Tests.Growth;

/// <summary>No legal file is slow: reading, comparing, merging and every kind of edit take twice the work for twice the file.</summary>
public class LargeFileTests
{
    private static readonly IReadOnlyList<(string Name, Func<Snapshot, Intended> Do)> Edits =
    [
        ("rename", now => SetField.In(now, Places.Circuit(1).Then("name"), "Pump of the well")),
        ("add a key", now => SetField.In(now, Places.Circuit(1).Then("length"), "30 ft")),
        ("clear a key", now => SetField.In(now, Places.Circuit(0).Then("name"), "")),
        ("move", now => MoveCircuits.In(now, [new(1, new SpaceNumber(7))])),
        ("move several", now => MoveCircuits.In(now, [new(0, new SpaceNumber(5)), new(1, new SpaceNumber(1))])),
        ("add a circuit", now => AddCircuit.In(now, new([new("space", "8"), new("name", "New"), new("breaker", "20 A")], []))),
        ("copy a circuit", now => CopyCircuit.In(now, now, 0, new SpaceNumber(8))),
        ("remove a circuit", now => RemoveCircuit.In(now, 0)),
        ("remove circuits", now => RemoveCircuits.In(now, [0, 1])),
        ("set the loads", now => SetLoads.In(now, 1, [NewLoad.Of("lighting", "100 W")])),
        ("add a load", now => AddLoad.In(now, 1, NewLoad.Of("lighting", "100 W"))),
        ("set a key of a load", now => SetField.In(now, Places.Load(1, 0).Then("rating"), "1 hp")),
        ("remove a load", now => RemoveLoad.In(now, 1, 0)),
        ("add a scenario", now => AddScenario.In(now, "Night")),
        ("accept a finding", now => AddAcceptance.In(now, "directory-text-vague", "", "seen")),
    ];

    private static readonly IReadOnlyList<(string Name, Func<YamlTree, TextChange> Do)> Splices =
    [
        ("set", tree => YamlEditor.SetScalar(tree, YamlPath.Of("panel", "name"), new NewScalar("Barn", ScalarKind.Text))),
        ("insert", tree => YamlEditor.InsertItem(tree, Places.Circuits, 0, new NewMapping([new("space", "3")]))),
        ("remove", tree => YamlEditor.RemoveItem(tree, Places.Circuits, 0)),
        ("insert into the large list", tree => YamlEditor.InsertItem(tree, LargeList, 1, "more")),
        ("remove from the large list", tree => YamlEditor.RemoveItem(tree, LargeList, 1)),
        ("remove the large part", tree => YamlEditor.RemoveEntry(tree, LargeList)),
    ];

    public static TheoryData<LargeFile> Files => [.. LargeFile.All];

    private static YamlPath LargeList => YamlPath.Of("x");

    [Theory]
    [MemberData(nameof(Files))]
    public void A_large_file_can_be_read(LargeFile file)
    {
        var snapshot = Read(file.Text(4 * Growth.First(file)));
        snapshot.Diagnostics.Where(found => found.IsError).ShouldBeEmpty();
        snapshot.Schedule!.Circuits.Length.ShouldBeGreaterThan(1);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Reading_takes_twice_the_work_for_twice_the_file(LargeFile file) =>
        Growth.WhyNotLinear(file, text => () => Read(text)).ShouldBeNull();

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_edit_takes_twice_the_work_for_twice_the_file(LargeFile file)
    {
        var steep = Growth.Share(file, Edits).Select(edit => (edit.Name, Growth: Growth.WhyNotLinear(file, text =>
        {
            var now = Read(text);
            return () => edit.Do(now);
        })));
        steep.Where(edit => edit.Growth is not null).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_splice_takes_twice_the_work_for_twice_the_file(LargeFile file)
    {
        var steep = Growth.Share(file, Splices).Select(splice => (splice.Name, Growth: Growth.WhyNotLinear(file, text =>
        {
            var tree = Trees.Of(text);
            return () => Tried(tree, splice.Do);
        })));
        steep.Where(splice => splice.Growth is not null).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Making_undoing_and_making_an_edit_again_take_twice_the_work_for_twice_the_file(LargeFile file) =>
        Growth.WhyNotLinear(file, text =>
        {
            var change = YamlEditor.SetScalar(Trees.Of(text), YamlPath.Of("panel", "name"), new NewScalar("Barn", ScalarKind.Text));
            return () =>
            {
                var history = new History(text);
                history.Make(change);
                history.Undo();
                history.Redo();
            };
        }).ShouldBeNull();

    [Theory]
    [MemberData(nameof(Files))]
    public void Comparing_takes_twice_the_work_for_twice_the_file(LargeFile file)
    {
        Growth.WhyNotLinear(file, text =>
        {
            var (old, now) = (Read(text), Read(Renamed(text)));
            return () => ScheduleChanges.Between(old, now).AreNone.ShouldBeFalse();
        }).ShouldBeNull();
        Growth.WhyNotLinear(file, text =>
        {
            var (old, now) = (Read(file.Text(1)), Read(text));
            return () => ScheduleChanges.Between(old, now);
        }).ShouldBeNull("with a small version");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Merging_takes_twice_the_work_for_twice_the_file(LargeFile file)
    {
        Growth.WhyNotLinear(file, text =>
        {
            var sources = (Old: Source(text), Ours: Source(Renamed(text)), Theirs: Source(Rated(text)));
            return () => ScheduleMerge.Of(sources.Old, sources.Ours, sources.Theirs).IsClean.ShouldBeTrue();
        }).ShouldBeNull();
    }

    [Fact]
    public void Many_replacements_in_one_text_are_made_in_one_pass()
    {
        var file = new LargeFile("letters", 8_000, count => new string('a', 4 * count));
        Growth.WhyNotLinear(file, text =>
        {
            var down = TextChange.OfDisjoint("", Enumerable.Range(0, text.Length).Select(at => new TextEdit(new(at, 1), "bc")));
            var up = down.Inverse(text);
            return () => up.ApplyTo(down.ApplyTo(text)).ShouldBe(text);
        }).ShouldBeNull();
    }

    [Fact]
    public void Aliases_that_would_fill_the_memory_are_counted_not_filled_in()
    {
        var value = new string('v', 60_000);
        var text = $"schedule: 1\nx: &a {value}\ny: [{string.Join(", ", Enumerable.Repeat("*a", 100))}]\n";
        Read(text).Diagnostics[0].Message.ShouldBe("more than 4,194,304 characters after the aliases are filled in");
    }

    private static string Renamed(string text) => text.Replace("name: Lights", "name: Lights of the shed", StringComparison.Ordinal);

    private static string Rated(string text) => text.Replace("bus: 100 A", "bus: 125 A", StringComparison.Ordinal);

    private static SourceText Source(string text) => SourceText.FromString(text);

    private static Snapshot Read(string text) => Snapshot.Of(Source(text));

    /// <summary>Where a kind of file has no such list, the edit is refused, which must not be slow either.</summary>
    private static void Tried(YamlTree tree, Func<YamlTree, TextChange> edit)
    {
        try
        {
            edit(tree);
        }
        catch (CannotEdit)
        {
            // Said in a sentence; the text is as it was.
        }
    }
}
