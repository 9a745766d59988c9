using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Tests.Reading;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Intents;

/// <summary>Each key of the format is set, changed and cleared through the same door, and undo gives every byte back.</summary>
public class EveryKeyTests
{
    public static TheoryData<string> Values =>
        [.. FieldBook.All.Where(one => one.Shape is FieldShape.Value or FieldShape.List).Select(one => one.Path)];

    public static TheoryData<string> Sections =>
        [.. FieldBook.All.Where(one => one.Shape is FieldShape.Mapping or FieldShape.ListOfMappings).Select(one => one.Path)];

    [Theory]
    [MemberData(nameof(Values))]
    public void A_key_can_be_given_another_value_and_undone(string key)
    {
        var before = Schedules.Snapshot(Schedules.EveryKey);
        foreach (var path in PlacesOf(key))
        {
            foreach (var other in Others(FieldBook.Find(key)!))
            {
                var done = SetField.In(before, path, other);
                if (!done.IsPossible) continue;
                Undone(before, done).ShouldBe(Schedules.EveryKey);
                Written(done.After, path).ShouldBe(string.Join(", ", other.Trim('[', ']')));
                return;
            }
        }

        key.ShouldBe("schedule", "only the version of the format has one value alone");
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void A_key_can_be_cleared_and_set_again_unless_others_need_it(string key)
    {
        var before = Schedules.Snapshot(Schedules.EveryKey);
        var path = PlacesOf(key).First();
        var old = Written(before, path)!;
        var cleared = SetField.In(before, path, "");
        if (!cleared.IsPossible)
        {
            cleared.Refusal.ShouldNotBeNullOrWhiteSpace();
            (FieldBook.Find(key)!.IsRequired || NeededByOthers.Contains(key)).ShouldBeTrue(cleared.Refusal);
            return;
        }

        Undone(before, cleared).ShouldBe(Schedules.EveryKey);
        var again = SetField.In(cleared.After, path, old);
        again.IsPossible.ShouldBeTrue(again.Refusal);
        Written(again.After, path).ShouldBe(old);
        Undone(cleared.After, again).ShouldBe(cleared.After.Source.Text);
    }

    [Theory]
    [MemberData(nameof(Sections))]
    public void A_section_goes_as_a_whole_unless_others_need_it(string key)
    {
        var before = Schedules.Snapshot(Schedules.EveryKey);
        var path = PlacesOf(key).First();
        var gone = SetField.In(before, path, "");
        if (gone.IsPossible)
        {
            gone.After.Places.NodeAt(path).ShouldBeNull();
            Undone(before, gone).ShouldBe(Schedules.EveryKey);
        }
        else
        {
            (key is "panel" or "circuits").ShouldBeTrue(gone.Refusal);
        }
    }

    [Fact]
    public void A_finding_is_accepted_and_no_longer_so()
    {
        var done = AddAcceptance.In(Shed.Snapshot, "gfci-missing", "1", "GFCI receptacles");
        Shed.Difference(done).ShouldBe("+ accepted:\n+   - rule: gfci-missing\n+     space: 1\n+     because: GFCI receptacles");
        RemoveAcceptance.In(done.After.ShouldNotBeNull(), 0).After.ShouldNotBeNull().Source.Text.ShouldBe(Shed.Text);
        AddAcceptance.In(Shed.Snapshot, "gfci-missing", "", " ").Refusal.ShouldBe("a finding is let stand for a reason; write it");
    }

    /// <summary>Taking these away leaves something else in the file that cannot stand.</summary>
    private static readonly string[] NeededByOthers = ["circuits[].id", "circuits[].poles", "circuits[].loads[].rating"];

    private static string Undone(Snapshot before, Intended done)
    {
        done.Change!.ApplyTo(before.Source.Text).ShouldBe(done.After!.Source.Text);
        return done.Change.Inverse(before.Source.Text).ApplyTo(done.After.Source.Text);
    }

    private static IEnumerable<string> Others(Field field) =>
    [
        .. field.Allowed, .. field.Offered, field.Example, "9", "7 A", "3 W", "120 V", "40 ft", "50 C", "9 %", "80 %", "yes", "no",
        "sort-lights", "cold-room", "another name", "2026-01-02", "0.5", "7 kWh", "300 ft2", "3 s", "17a", "all", "5x", "1 kVA", "12",
        string.Join(", ", Enumerable.Repeat("5 W", 24)),
    ];

    /// <summary>Each place in the file that the key has; the lists are walked to their third entry.</summary>
    private static IEnumerable<YamlPath> PlacesOf(string key)
    {
        var tree = Schedules.Snapshot(Schedules.EveryKey).Tree!;
        IEnumerable<YamlPath> paths = [YamlPath.Root];
        foreach (var word in key.Split('.'))
        {
            var name = word.Replace("[]", "", StringComparison.Ordinal);
            paths = paths.Select(path => path.Then(name));
            if (name != word) paths = paths.SelectMany(path => Enumerable.Range(0, 6).Select(index => path.Then(index)));
        }

        return paths.Where(path => path.Find(tree) is not null);
    }

    private static string? Written(Snapshot snapshot, YamlPath path) => snapshot.Places.NodeAt(path) switch
    {
        null => null,
        { IsSequence: true } list => string.Join(", ", list.Items.Select(item => item.Value.Value)),
        var node => node.Value,
    };
}
