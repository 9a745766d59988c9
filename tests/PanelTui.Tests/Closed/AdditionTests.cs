using System.Reflection;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;
using PanelTui.Sheets.Formats;
using PanelTui.Tables;

namespace PanelTui.Tests.Closed;

/// <summary>What is added is added everywhere: each test names the step that was forgotten ("To add" in DEVELOPERS.md).</summary>
public class AdditionTests
{
    public static TheoryData<CodeEdition> Editions => [.. Enum.GetValues<CodeEdition>()];

    /// <summary>
    /// The sections of the engine as an edition numbers them, one file an edition. A new edition has no file, so nobody
    /// cites it before somebody has read through its sections.
    /// </summary>
    [Theory, MemberData(nameof(Editions))]
    public void Each_edition_has_a_file_with_the_sections_that_are_cited_from_it(CodeEdition edition) => Golden.Compare(
        string.Join('\n', Sections.Select(section => $"{section.In(edition)}").Distinct().Order(StringComparer.Ordinal)),
        Case("editions", $"{edition.Word}.txt"),
        Golden.IsAccepting);

    [Theory, MemberData(nameof(Editions))]
    public void Each_edition_is_named_on_the_page_of_what_is_calculated_and_how(CodeEdition edition) =>
        Doc("calculation.md").ShouldContain(edition.Word);

    [Fact]
    public void Each_method_of_a_calculated_load_is_in_the_book_once() =>
        DemandBook.All.Select(method => method.Name).ShouldBe(Enum.GetValues<DemandMethodName>());

    [Fact]
    public void Each_class_of_a_method_is_in_the_book() => ClassesOf(typeof(DemandMethod))
        .ShouldBe(DemandBook.All.Select(method => method.GetType().Name), ignoreOrder: true);

    /// <summary>`selected` calculates by no rule of the code, so no source has an example of it.</summary>
    [Fact]
    public void Each_method_but_selected_has_an_example_from_a_source()
    {
        var cases = Texts(Case("demand"));
        cases.ShouldNotBeEmpty();
        Enum.GetValues<DemandMethodName>().Select(method => method.Word).Except([DemandMethodName.Selected.Word])
            .Where(method => !cases.Any(text => text.Contains($"method: {method}", StringComparison.Ordinal)))
            .ShouldBeEmpty();
    }

    [Fact]
    public void Each_method_has_a_row_on_the_page_of_what_is_calculated_and_how() => Enum.GetValues<DemandMethodName>()
        .Where(method => !Doc("calculation.md").Contains($"`{method.Word}`", StringComparison.Ordinal)).ShouldBeEmpty();

    [Fact]
    public void Each_panel_system_is_in_the_list_of_all() => Statics<PanelSystem>().ShouldBe(PanelSystem.All);

    /// <summary>Two wires of a system differ by the phasor difference: 2 V sin(angle / 2).</summary>
    [Fact]
    public void The_voltages_of_each_panel_system_fit_the_angles_between_its_legs()
    {
        foreach (var system in PanelSystem.All.Where(system => system.Legs.Length > 1).AtLeastOne())
        {
            var angle = (system.DegreesOf(Leg.B) - system.DegreesOf(Leg.A)) * Math.PI / 180;
            var between = 2 * (double)system.LineToNeutral.Value * Math.Abs(Math.Sin(angle / 2));
            ((double)system.LineToLine!.Value.Value).ShouldBe(between, 0.5, $"{system}");
            system.IsWye.ShouldBe(Math.Abs(Math.Cos(angle) + 0.5) < 1e-9, $"{system}");
            system.Name.ShouldStartWith(system.IsWye && system.Legs.Length == 3 ? $"{system.LineToLine.Value.Value}Y" : $"{system.LineToNeutral.Value}/");
        }
    }

    [Fact]
    public void Each_panel_system_has_a_schedule_among_the_cases()
    {
        var cases = Texts(Case("demand")).Concat(Texts(Case("rules"))).ToList();
        PanelSystem.All.Select(system => system.Name)
            .Where(system => !cases.Any(text => text.Contains(system, StringComparison.Ordinal))).ShouldBeEmpty();
    }

    [Fact]
    public void Each_panel_system_has_a_row_on_the_page_of_the_format() => PanelSystem.All
        .Where(system => !Doc("format.md").Contains($"`{system.Name}`", StringComparison.Ordinal)).ShouldBeEmpty();

    [Fact]
    public void Each_output_format_is_in_the_list_of_all() => Statics<SheetFormat>().ShouldBe(SheetFormat.All);

    [Fact]
    public void No_two_output_formats_share_an_ending() => SheetFormat.All.SelectMany(format => format.Endings).ShouldBeUnique();

    [Fact]
    public void Each_column_of_the_table_is_on_the_page_that_describes_it() => Doc("friendly.md")
        .ShouldContain($"The columns: {string.Join(", ", CircuitColumns.All.Select(column => column.Title))}.");

    /// <summary>A key of a breaker is a column, so that it can be typed, filled down and pasted.</summary>
    [Fact]
    public void Each_key_of_a_circuit_has_a_column()
    {
        var keys = FieldBook.Of("circuits[]").Select(field => field.Key).ToList();
        keys.ShouldNotBeEmpty();
        keys.Except(CircuitColumns.All.Select(column => column.Key)).ShouldBeEmpty();
    }

    private static IEnumerable<CodeSection> Sections =>
        typeof(Assessment).Assembly.GetTypes()
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(held => held.FieldType == typeof(CodeSection))
            .Select(held => (CodeSection)held.GetValue(null)!)
            .Concat(RuleBook.All.SelectMany(rule => rule.Sections));

    private static IEnumerable<string> ClassesOf(Type type) =>
        type.Assembly.GetTypes().Where(one => !one.IsAbstract && one.IsSubclassOf(type)).Select(one => one.Name);

    private static IEnumerable<T> Statics<T>() => typeof(T).GetFields(BindingFlags.Static | BindingFlags.Public)
        .Where(field => field.FieldType == typeof(T)).Select(field => (T)field.GetValue(null)!);

    private static IReadOnlyCollection<string> Texts(string folder) =>
        [.. Directory.GetFiles(folder, "*.yaml").Select(File.ReadAllText)];

    private static string Case(params string[] names) => Path.Combine([SourceTree.Root, "tests", "Cases", .. names]);

    private static string Doc(string page) => File.ReadAllText(Path.Combine(SourceTree.Root, "docs", page));
}
