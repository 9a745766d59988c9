using System.Text.Json;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Presentation;

namespace PanelTui.Tests.CommandLine;

public class SchemaTests
{
    [Fact]
    public void The_published_schema_is_the_one_that_the_program_prints()
    {
        var file = System.IO.Path.Combine(SourceTree.Root, "docs", "panel.schema.json");
        var printed = Ran.Of("schema").Out.ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable("PANELTUI_ACCEPT") == "1") File.WriteAllText(file, printed);
        File.ReadAllText(file).ShouldBe(printed, "PANELTUI_ACCEPT=1 writes it");
    }

    [Fact]
    public void The_schema_has_every_key_that_the_reader_knows_and_no_other()
    {
        using var schema = JsonDocument.Parse(ScheduleSchema.Text);
        Keys(schema.RootElement, "").Order().ShouldBe(FieldBook.All.Select(field => field.Path).Order());
    }

    [Fact]
    public void The_schema_requires_what_the_reader_requires()
    {
        using var schema = JsonDocument.Parse(ScheduleSchema.Text);
        Required(schema.RootElement, "").Order().ShouldBe(FieldBook.All.Where(field => field.IsRequired).Select(field => field.Path).Order());
    }

    /// <summary>A word where a quantity or a number belongs is refused by the reader, and marked by an editor that goes by the schema.</summary>
    [Fact]
    public void The_schema_refuses_a_word_where_the_reader_wants_a_number()
    {
        var measured = ScheduleSchema.Text.Split("\"pattern\"").Length - 1;
        measured.ShouldBeGreaterThan(40);
        FieldBook.All.Count(field => field.WhyNot("twenty") is not null && field.WhyNot(field.Example) is null && field.Example.All(letter => char.IsDigit(letter)))
            .ShouldBeLessThanOrEqualTo(measured);
    }

    [Fact]
    public void New_names_the_schema_in_its_first_line() =>
        Ran.Of("new", "-").Out.ShouldStartWith("# yaml-language-server: $schema=panel.schema.json\n");

    private static IEnumerable<string> Keys(JsonElement map, string owner) =>
        Properties(map, owner).SelectMany(pair => Below(pair.Path, pair.Value).Prepend(pair.Path));

    private static IEnumerable<string> Below(string path, JsonElement value) =>
        value.TryGetProperty("items", out var items) ? Keys(items, $"{path}[]") : Keys(value, path);

    private static IEnumerable<string> Required(JsonElement map, string owner)
    {
        var own = map.TryGetProperty("required", out var required)
            ? required.EnumerateArray().Select(key => Path(owner, key.GetString()!))
            : [];
        return own.Concat(Properties(map, owner).SelectMany(pair =>
            pair.Value.TryGetProperty("items", out var items) ? Required(items, $"{pair.Path}[]") : Required(pair.Value, pair.Path)));
    }

    private static IEnumerable<(string Path, JsonElement Value)> Properties(JsonElement map, string owner) =>
        map.TryGetProperty("properties", out var properties)
            ? properties.EnumerateObject().Select(property => (Path(owner, property.Name), property.Value))
            : [];

    private static string Path(string owner, string key) => owner.Length == 0 ? key : $"{owner}.{key}";
}
