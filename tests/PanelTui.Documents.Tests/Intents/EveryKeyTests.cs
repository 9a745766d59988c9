using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Tests.Reading;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Intents;

/// <summary>Each key of the format is set, changed and cleared through the same door, and undo gives every byte back.</summary>
public class EveryKeyTests
{
    public static TheoryData<string, Style> Values =>
        InBothStyles(FieldBook.All.Where(one => one.Shape is FieldShape.Value or FieldShape.List));

    public static TheoryData<string, Style> Sections =>
        InBothStyles(FieldBook.All.Where(one => one.Shape is FieldShape.Mapping or FieldShape.ListOfMappings));

    /// <summary>How the file that is edited is written.</summary>
    public enum Style
    {
        /// <summary>A key a line.</summary>
        Lines,

        /// <summary>Each section, and each entry of a list, in braces on one line with a comment after it.</summary>
        Braces,
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void A_key_can_be_given_another_value_and_undone(string key, Style style)
    {
        var before = Schedules.Snapshot(Text(style));
        foreach (var path in PlacesOf(key, before).AtLeastOne())
        {
            foreach (var other in Others(FieldBook.Find(key)!).AtLeastOne())
            {
                var done = SetField.In(before, path, other);
                if (!done.IsPossible) continue;
                Undone(before, done).ShouldBe(Text(style));
                Written(done.After, path).ShouldBe(string.Join(", ", other.Trim('[', ']')));
                Comments(done.After).ShouldBe(Comments(before), "a comment beside it stays");
                return;
            }
        }

        key.ShouldBe("schedule", "only the version of the format has one value alone");
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void A_key_can_be_cleared_and_set_again_unless_others_need_it(string key, Style style)
    {
        var before = Schedules.Snapshot(Text(style));
        var path = PlacesOf(key, before).First();
        var old = Written(before, path)!;
        var cleared = SetField.In(before, path, "");
        if (!cleared.IsPossible)
        {
            cleared.Refusal.ShouldNotBeNullOrWhiteSpace();
            (FieldBook.Find(key)!.IsRequired || NeededByOthers.Contains(key)).ShouldBeTrue(cleared.Refusal);
            return;
        }

        Undone(before, cleared).ShouldBe(Text(style));
        var again = SetField.In(cleared.After, path, old);
        again.IsPossible.ShouldBeTrue(again.Refusal);
        Written(again.After, path).ShouldBe(old);
        Undone(cleared.After, again).ShouldBe(cleared.After.Source.Text);
    }

    [Theory]
    [MemberData(nameof(Sections))]
    public void A_section_goes_as_a_whole_unless_others_need_it(string key, Style style)
    {
        var before = Schedules.Snapshot(Text(style));
        var path = PlacesOf(key, before).First();
        var gone = SetField.In(before, path, "");
        if (gone.IsPossible)
        {
            gone.After.Places.NodeAt(path).ShouldBeNull();
            Undone(before, gone).ShouldBe(Text(style));
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

    private static TheoryData<string, Style> InBothStyles(IEnumerable<Field> fields)
    {
        var rows = new TheoryData<string, Style>();
        foreach (var field in fields)
            foreach (var style in Enum.GetValues<Style>()) rows.Add(field.Path, style);
        return rows;
    }

    private static string Text(Style style) => style == Style.Lines ? Schedules.EveryKey : Braces.Value;

    private static readonly Lazy<string> Braces = new(() =>
    {
        var tree = Schedules.Snapshot(Schedules.EveryKey).Tree!;
        return string.Concat(tree.Root!.Pairs.Select(pair => pair.Value is { IsSequence: true } list
            ? $"{pair.Key.Value}:   # what follows\n{string.Concat(list.Items.Select((item, at) => $"  # above {at}\n  - {Flow(tree, item.Value)}   # beside {at}\n"))}"
            : $"{pair.Key.Value}: {Flow(tree, pair.Value)}   # {pair.Key.Value}\n"));
    });

    private static string Flow(YamlTree tree, YamlNode node) => node switch
    {
        { IsMapping: true } => $"{{{string.Join(", ", node.Pairs.Select(pair => $"{pair.Key.Value}: {Flow(tree, pair.Value)}"))}}}",
        { IsSequence: true } => $"[{string.Join(", ", node.Items.Select(item => Flow(tree, item.Value)))}]",
        _ => node.Value!.Contains(',', StringComparison.Ordinal) ? $"'{node.Value.Replace("'", "''", StringComparison.Ordinal)}'" : tree.Source.Text[node.Start..node.End],
    };

    private static string[] Comments(Snapshot snapshot) =>
        [.. snapshot.Tree!.Comments.Select(comment => snapshot.Source.Text.Substring(comment.Start, comment.Length))];

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
    private static IEnumerable<YamlPath> PlacesOf(string key, Snapshot file)
    {
        var tree = file.Tree!;
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
