using System.Reflection;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>The table of keys: complete, true, and what the readers go by.</summary>
public class FieldBookTests
{
    public static TheoryData<string> Fields => [.. FieldBook.All.Select(one => one.Path)];

    public static TheoryData<string> Values =>
        [.. FieldBook.All.Where(one => one.Shape is FieldShape.Value or FieldShape.List).Select(one => one.Path)];

    [Fact]
    public void No_field_is_forgotten_in_the_book() => typeof(FieldBook).Assembly.GetTypes()
        .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public))
        .Where(member => member.FieldType.IsAssignableTo(typeof(Field)))
        .Select(member => (Field)member.GetValue(null)!)
        .ShouldBe(FieldBook.All, ignoreOrder: true);

    [Theory]
    [MemberData(nameof(Values))]
    public void Each_example_can_stand_where_it_is_shown(string path) =>
        Field(path).WhyNot(Field(path).Example).ShouldBeNull();

    [Theory]
    [MemberData(nameof(Fields))]
    public void Each_field_says_what_is_expected_and_what_it_is_for(string path)
    {
        Field(path).Expected.ShouldNotBeNullOrWhiteSpace();
        Field(path).Help.ShouldNotBeNullOrWhiteSpace();
        Field(path).Help.ShouldNotEndWith(".");
    }

    [Theory]
    [MemberData(nameof(Fields))]
    public void The_file_with_every_key_has_the_key(string path) => Place(path).ShouldNotBeNull();

    [Fact]
    public void The_file_with_every_key_is_read_with_one_note() =>
        Schedules.Lines(Schedules.Snapshot(Schedules.EveryKey))
            .ShouldBe(["71:12: note: spare is yes, so the loads of this circuit are not counted [spare-with-loads]"]);

    [Theory]
    [MemberData(nameof(Fields))]
    public void Each_key_is_really_read(string path)
    {
        var before = Schedules.Snapshot(Schedules.EveryKey);
        var after = Schedules.Snapshot(Replaced(path, Field(path).IsFreeText ? "other" : "?!"));
        var changed = after.HasErrors || Facts.Of(after.Schedule) != Facts.Of(before.Schedule);
        changed.ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(Fields))]
    public void Each_key_is_missed_when_it_is_taken_away(string path)
    {
        var before = Schedules.Snapshot(Schedules.EveryKey);
        var after = Schedules.Snapshot(Without(path));
        after.HasErrors.ShouldBe(Field(path).IsRequired || NeededByOthers(path));
        if (!after.HasErrors) Facts.Of(after.Schedule).ShouldNotBe(Facts.Of(before.Schedule));
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void A_default_that_is_written_out_changes_nothing(string path)
    {
        var field = Field(path);
        if (field.Default is not { } value || value == "none" || field.WhyNot(value) is not null) return;
        var without = Schedules.Snapshot(Without(path)).Schedule;
        Facts.Of(Schedules.Snapshot(Replaced(path, value)).Schedule).ShouldBe(Facts.Of(without));
    }

    [Fact]
    public void A_place_in_a_file_leads_to_its_field() =>
        FieldBook.At(YamlPath.Of("circuits", 3, "loads", 0, "kind")).ShouldBe(LoadFields.Kind);

    /// <summary>
    /// Taking these away leaves names in the file that no circuit has, or a load without what it needs.
    /// </summary>
    private static bool NeededByOthers(string path) =>
        path is "circuits" or "circuits[].id" or "circuits[].poles" or "circuits[].loads[].rating";

    private static Field Field(string path) => FieldBook.Find(path).ShouldNotBeNull();

    private static YamlPath PathOf(string pattern)
    {
        var path = YamlPath.Root;
        foreach (var word in pattern.Split('.'))
        {
            path = path.Then(word.Replace("[]", "", StringComparison.Ordinal));
            if (word.EndsWith("[]", StringComparison.Ordinal)) path = path.Then(0);
        }

        return path;
    }

    private static YamlNode? Place(string pattern) => PathOf(pattern).Find(Tree());

    private static YamlTree Tree() => YamlTree.Parse(SourceText.FromString(Schedules.EveryKey));

    private static string Replaced(string pattern, string value) =>
        new TextEdit(Place(pattern).ShouldNotBeNull().Span, value).ApplyTo(Schedules.EveryKey);

    /// <summary>The key gets a name that means nothing, which is as if it were not there.</summary>
    private static string Without(string pattern)
    {
        var path = PathOf(pattern);
        var owner = path.Parent.Find(Tree()).ShouldNotBeNull();
        return new TextEdit(owner.PairOf(path.Last.Key!)!.Key.Span, "nothing-at-all").ApplyTo(Schedules.EveryKey);
    }
}
