using System.Diagnostics;

namespace PanelTui.Tests.CommandLine;

/// <summary>
/// Others read the published schema: ajv, a validator of JSON Schema draft 7, and yaml-language-server, which editors use.
/// PANELTUI_NPM names a folder in which `npm install ajv ajv-formats yaml yaml-language-server` was run; skipped without.
/// </summary>
public class SchemaOutsideTests
{
    private static readonly string Schema = Path.Combine(SourceTree.Root, "docs", "panel.schema.json");

    private static string[] Examples => Directory.GetFiles(Path.Combine(SourceTree.Root, "examples"), "*.panel.yaml");

    [Fact]
    public void A_strict_validator_of_draft_7_takes_the_schema_and_every_example()
    {
        var lines = Node("schema-ajv.mjs", Examples);
        lines[0].ShouldBe("compiles");
        lines.Skip(1).AtLeastOne().ShouldAllBe(line => line.EndsWith(": fits"));
        lines.Length.ShouldBe(1 + Examples.Length);
    }

    [Theory]
    [InlineData("breaker: 20 A", "breaker: [20]", "line 66")]
    [InlineData("    space: 3\n", "    spaec: 3\n", "space")]
    [InlineData("spaces: 20", "spaces: twenty", "line 9")]
    public void An_editor_shows_what_is_wrong_in_its_line(string right, string wrong, string said)
    {
        using var folder = new TempFolder();
        var text = File.ReadAllText(Path.Combine(SourceTree.Root, "examples", "packing-shed.panel.yaml"));
        text.ShouldContain(right);
        Node("schema-server.mjs", [folder.File("wrong.panel.yaml", text.Replace(right, wrong, StringComparison.Ordinal))]).Single().ShouldContain(said);
    }

    [Fact]
    public void An_editor_has_nothing_to_say_of_an_example() =>
        Node("schema-server.mjs", Examples).AtLeastOne().ShouldAllBe(line => line.EndsWith(": nothing"));

    private static string[] Node(string script, string[] files)
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable("PANELTUI_NPM") is { Length: > 0 }, "PANELTUI_NPM names no folder with ajv and yaml-language-server");
        using var node = Process.Start(new ProcessStartInfo("node", [Path.Combine(SourceTree.Root, "tests", "Blackbox", script), Schema, .. files])
        {
            RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
        var error = node.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var lines = node.StandardOutput.ReadToEnd();
        node.WaitForExit();
        node.ExitCode.ShouldBe(0, error.GetAwaiter().GetResult());
        return lines.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
