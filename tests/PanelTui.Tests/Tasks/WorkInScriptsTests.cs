using System.Text.Json;
using PanelTui.Tests.CommandLine;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 12: everything in scripts and CI, with JSON and exit codes, and no terminal.</summary>
public class WorkInScriptsTests
{
    private const string Other = "name: Barn pump";

    [Theory]
    [InlineData("check")]
    [InlineData("calc")]
    [InlineData("run")]
    [InlineData("balance")]
    public void A_verb_prints_one_JSON_object_on_standard_output_and_nothing_else(string verb)
    {
        var ran = Ran.Of(verb, Shed.Example("packing-shed"), "--json");
        ran.Code.ShouldBe(0);
        ran.Error.ShouldBeEmpty();
        using var json = JsonDocument.Parse(ran.Out);
        json.RootElement.ValueKind.ShouldBe(JsonValueKind.Object);
    }

    [Fact]
    public void Exit_codes_tell_clean_from_errors_from_what_cannot_be_used()
    {
        using var folder = new TempFolder();
        var clean = folder.File("clean.yaml", Shed.Text);
        var wrong = folder.File("wrong.yaml", Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal));
        var torn = folder.File("torn.yaml", "schedule: [");
        Ran.Of("check", clean).Code.ShouldBe(0);
        Ran.Of("check", wrong).Code.ShouldBe(1);
        Ran.Of("check", torn).Code.ShouldBe(2);
        Ran.Of("check", clean, wrong).Code.ShouldBe(1);
        Ran.Of("diff", clean, clean).Code.ShouldBe(0);
        Ran.Of("diff", clean, wrong).Code.ShouldBe(1);
        Ran.Of("diff", clean, folder.File("none.yaml")).Code.ShouldBe(2);
        Ran.Of("print", "directory", clean).Code.ShouldBe(0);
    }

    [Fact]
    public void Two_peoples_changes_merge_and_both_are_there()
    {
        using var folder = new TempFolder();
        var ours = folder.File("ours.yaml", Shed.Text.Replace("name: Well pump", Other, StringComparison.Ordinal));
        var theirs = folder.File("theirs.yaml", Shed.Text.Replace("rating: 480 W", "rating: 400 W", StringComparison.Ordinal));
        Ran.Of("merge", folder.File("base.yaml", Shed.Text), ours, theirs).Code.ShouldBe(0);
        var merged = File.ReadAllText(ours);
        merged.ShouldContain(Other);
        merged.ShouldContain("rating: 400 W");
    }

    [Fact]
    public void A_problem_line_has_file_line_column_severity_and_rule()
    {
        using var folder = new TempFolder();
        var file = folder.File("wrong.yaml", Shed.Text.Replace("breaker: 15 A\n", "breaker: 15 V\n", StringComparison.Ordinal));
        Ran.Of("check", file).Out.Split('\n')[0].ShouldMatch(@"wrong\.yaml:\d+:\d+: error: .+ \[[a-z-]+\]");
    }
}
