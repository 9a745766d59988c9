using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using PanelTui.Presentation;
using PanelTui.Tests.Git;

namespace PanelTui.Tests.CommandLine;

/// <summary>Every output in JSON is what its published JSON Schema says, and the schema describes every key of it.</summary>
public class JsonOutputTests
{
    private static readonly string Folder = Path.Combine(SourceTree.Root, "docs", "json");

    private static readonly string[] Examples = [.. Directory.GetFiles(Path.Combine(SourceTree.Root, "examples"), "*.panel.yaml").Order()];

    public static TheoryData<string> OfExamples => [.. Examples.Select(file => Path.GetFileName(file))];

    [Fact]
    public void Each_output_has_a_schema_in_the_docs_and_each_schema_an_output() =>
        Directory.GetFiles(Folder, "*.schema.json").Select(file => Path.GetFileName(file)).Order()
            .ShouldBe(JsonOutput.All.Select(output => $"{output.Name}.schema.json").Order());

    [Fact]
    public void Each_schema_names_its_draft_and_says_of_every_key_what_it_is()
    {
        foreach (var output in JsonOutput.All.AtLeastOne())
        {
            var schema = JsonNode.Parse(TextOf(output))!;
            schema["$schema"]!.GetValue<string>().ShouldBe("https://json-schema.org/draft/2020-12/schema");
            var keys = Keys(schema).ToList();
            keys.Count.ShouldBeGreaterThan(2, output.Name);
            keys.Where(key => key.Value["description"] is null).Select(key => key.Name).Except(["A", "B", "C"]).ShouldBeEmpty(output.Name);
        }
    }

    [Theory, MemberData(nameof(OfExamples))]
    public void An_example_gives_what_the_schemas_say(string example)
    {
        var file = Path.Combine(SourceTree.Root, "examples", example);
        ShouldFit(JsonOutput.Check, Ran.Of("check", file, "--json"), 0);
        ShouldFit(JsonOutput.Calc, Ran.Of("calc", file, "--json"), 0);
        ShouldFit(JsonOutput.Run, Ran.Of("run", file, "--json"), 0);
        ShouldFit(JsonOutput.Transfer, Ran.Of("transfer", file, "--json"), 0);
        ShouldFit(JsonOutput.Diff, Ran.Of("diff", Shed.Example("packing-shed"), file, "--json"), example.StartsWith("packing", StringComparison.Ordinal) ? 0 : 1);
    }

    [Fact]
    public void Each_figure_gives_what_the_schema_says()
    {
        var figures = Shed.Snapshot().Assessment!.Figures;
        figures.ShouldNotBeEmpty();
        foreach (var figure in figures) ShouldFit(JsonOutput.Why, Ran.With(Shed.Text, "calc", "-", "--json", "--why", figure), 0);
    }

    [Fact]
    public void A_balance_gives_what_the_schema_says_and_whether_it_was_written()
    {
        using var folder = new TempFolder();
        var file = folder.File("shed.panel.yaml", Shed.Text);
        ShouldFit(JsonOutput.Balance, Ran.Of("balance", file, "--json"), 0).GetProperty("written").GetBoolean().ShouldBeFalse();
        ShouldFit(JsonOutput.Balance, Ran.Of("balance", file, "--json", "--write", "-n"), 0).GetProperty("written").GetBoolean().ShouldBeFalse();
        File.ReadAllText(file).ShouldBe(Shed.Text);
        ShouldFit(JsonOutput.Balance, Ran.Of("balance", file, "--json", "--write"), 0).GetProperty("written").GetBoolean().ShouldBeTrue();
        File.ReadAllText(file).ShouldNotBe(Shed.Text);
    }

    [Fact]
    public void Rules_and_info_give_what_the_schemas_say()
    {
        ShouldFit(JsonOutput.Rules, Ran.Of("rules", "--json"), 0).GetProperty("rules").GetArrayLength().ShouldBe(Engine.Rules.RuleBook.All.Length);
        ShouldFit(JsonOutput.Rules, Ran.Of("rules", "gfci-missing", "--json"), 0).GetProperty("rules").GetArrayLength().ShouldBe(1);
        var outputs = ShouldFit(JsonOutput.Info, Ran.Of("info", "--json"), 0).GetProperty("json_outputs");
        outputs.EnumerateObject().Select(one => one.Name).ShouldBe(JsonOutput.All.Select(output => output.Name));
    }

    [Fact]
    public void A_print_tells_its_files_with_their_sizes()
    {
        using var folder = new TempFolder();
        var file = folder.File("shed.panel.yaml", Clash);
        var told = ShouldFit(JsonOutput.Print, Ran.Of("print", "parts", file, "-o", folder.File("parts.csv"), "--json"), 1);
        told.GetProperty("not_settled").GetString()!.ShouldContain("NOT SETTLED");
        told.GetProperty("files")[0].GetProperty("bytes").GetInt64().ShouldBe(new FileInfo(folder.File("parts.csv")).Length);
        var dry = ShouldFit(JsonOutput.Print, Ran.Of("print", "all", file, "-o", folder.File("permit"), "--json", "-n"), 1);
        dry.GetProperty("written").GetBoolean().ShouldBeFalse();
        dry.GetProperty("files").GetArrayLength().ShouldBeGreaterThan(7);
    }

    [Fact]
    public void A_merge_tells_what_is_left_to_settle()
    {
        using var folder = new TempFolder();
        var (old, ours, theirs) = (folder.File("base.yaml", Shed.Text), folder.File("ours.yaml", Pump("Barn pump")), folder.File("theirs.yaml", Pump("Yard pump")));
        var left = ShouldFit(JsonOutput.Merge, Ran.Of("merge", old, ours, theirs, "--json", "-n"), 1);
        left.GetProperty("conflicts").GetArrayLength().ShouldBe(1);
        ShouldFit(JsonOutput.Merge, Ran.Of("merge", old, ours, old, "--json", "-o", folder.File("m.yaml")), 0).GetProperty("merged").GetBoolean().ShouldBeTrue();
        File.ReadAllText(folder.File("m.yaml")).ShouldBe(Pump("Barn pump"));
        ShouldFit(JsonOutput.Merge, Ran.Of("merge", old, ours, folder.File("no.yaml", "circuits: ["), "--json"), 1).GetProperty("by_lines").GetString().ShouldNotBeNull();
    }

    [Fact]
    public void The_set_up_of_git_tells_what_is_wrong()
    {
        using var repository = new Repository(Shed.Text);
        var (code, said) = repository.Run("paneltui", "git-setup", "--check", "--json");
        ShouldFit(JsonOutput.GitSetup, new Ran(code, said, ""), 0).GetProperty("ok").GetBoolean().ShouldBeTrue();
        repository.Must("git", "config", "--unset", "merge.panel.name");
        (code, said) = repository.Run("paneltui", "git-setup", "--check", "--json");
        ShouldFit(JsonOutput.GitSetup, new Ran(code, said, ""), 1).GetProperty("problems").GetArrayLength().ShouldBe(1);
        (code, said) = repository.Run("paneltui", "git-setup", "--json");
        ShouldFit(JsonOutput.GitSetup, new Ran(code, said, ""), 0).GetProperty("changed").GetBoolean().ShouldBeTrue();
    }

    [Fact]
    public void Of_several_files_each_is_told_those_that_cannot_be_read_too()
    {
        using var folder = new TempFolder();
        string[] files =
        [
            folder.File("good.yaml", Shed.Text), folder.File("clash.yaml", Clash), folder.File("broken.yaml", "panel: [\n"), folder.File("missing.yaml"),
            folder.File("value.yaml", Shed.Text.Replace("breaker: 15 A\n", "breaker: 15\n", StringComparison.Ordinal)),
            folder.File("bytes.yaml", "panel: \0\n"), folder.File("noted.yaml", Shed.Text + "colour: red\n"), folder.File("accepted.yaml", Accepted),
        ];
        var ran = Ran.Of(["check", .. files, "--json"]);
        var told = ShouldFit(JsonOutput.Check, ran, 2);
        var told4 = told.GetProperty("files").EnumerateArray().ToList();
        told4.Select(file => file.GetProperty("file").GetString()).ShouldBe(files);
        told4.Select(file => file.GetProperty("readable").GetBoolean()).ShouldBe([true, true, false, false, false, false, true, true]);
        told4[3].GetProperty("problem").GetString().ShouldBe($"there is no file '{files[3]}'");
        told4[3].GetProperty("line").ValueKind.ShouldBe(JsonValueKind.Null);
        told4[5].GetProperty("line").GetInt32().ShouldBe(1);
        told.GetProperty("diagnostics").GetArrayLength().ShouldBeGreaterThan(1);
        told.GetProperty("findings").GetArrayLength().ShouldBeGreaterThan(0);
        told.GetProperty("accepted").GetArrayLength().ShouldBe(1);
        ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(told4.Count(file => file.GetProperty("problem").ValueKind != JsonValueKind.Null));
    }

    [Fact]
    public void A_key_that_no_schema_describes_is_noticed()
    {
        var text = Ran.With(Shed.Text, "transfer", "-", "--json").Out.Replace("\"panel\"", "\"panell\"", StringComparison.Ordinal);
        Strict(JsonOutput.Transfer).Evaluate(JsonDocument.Parse(text).RootElement).IsValid.ShouldBeFalse();
    }

    private static readonly string Clash = Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal);

    private static readonly string Accepted = $"{Clash}accepted:\n  - {{rule: space-taken-twice, because: A drawing of both}}\n";

    private static string Pump(string name) => Shed.Text.Replace("Well pump", name, StringComparison.Ordinal);

    /// <summary>Checks against the schema as it is published, and once more with every key that it does not describe forbidden.</summary>
    private static JsonElement ShouldFit(JsonOutput output, Ran ran, int code)
    {
        ran.Code.ShouldBe(code, ran.Error);
        var root = JsonDocument.Parse(ran.Out).RootElement;
        root.EnumerateObject().Select(key => key.Name).Take(2).ShouldBe(["schema", "output"]);
        root.GetProperty("schema").GetInt32().ShouldBe(output.Version);
        root.GetProperty("output").GetString().ShouldBe(output.Name);
        foreach (var schema in (JsonSchema[])[Published(output), Strict(output)])
        {
            var result = schema.Evaluate(root, new EvaluationOptions { OutputFormat = OutputFormat.List });
            result.IsValid.ShouldBeTrue(string.Join('\n', (result.Details ?? []).Where(one => one.Errors is not null)
                .Select(one => $"{output.Name} {one.InstanceLocation}: {string.Join("; ", one.Errors!.Values)}")));
        }

        return root;
    }

    private static string TextOf(JsonOutput output) => File.ReadAllText(Path.Combine(Folder, $"{output.Name}.schema.json"));

    private static JsonSchema Published(JsonOutput output) => Built(JsonNode.Parse(TextOf(output))!);

    private static JsonSchema Strict(JsonOutput output)
    {
        var schema = JsonNode.Parse(TextOf(output))!;
        foreach (var map in Maps(schema).ToList()) map["additionalProperties"] ??= false;
        return Built(schema);
    }

    private static JsonSchema Built(JsonNode schema)
    {
        schema.AsObject().Remove("$id"); // both forms of one schema are used side by side
        return JsonSchema.FromText(schema.ToJsonString());
    }

    private static IEnumerable<(string Name, JsonNode Value)> Keys(JsonNode schema) =>
        Maps(schema).SelectMany(map => map["properties"]!.AsObject().Select(key => (key.Key, key.Value!)));

    private static IEnumerable<JsonObject> Maps(JsonNode node) => node switch
    {
        JsonObject map => map.SelectMany(pair => pair.Value is null ? [] : Maps(pair.Value)).Concat(map["properties"] is JsonObject && map.ContainsKey("type") ? [map] : []),
        JsonArray list => list.SelectMany(item => item is null ? [] : Maps(item)),
        _ => [],
    };
}
