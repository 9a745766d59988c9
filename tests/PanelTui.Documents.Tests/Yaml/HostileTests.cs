using System.Text;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Yaml;

/// <summary>Files that would hang or kill a careless reader get a sentence with a place, or open.</summary>
public class HostileTests
{
    private static string Times(string text, int count) => new StringBuilder().Insert(0, text, count).ToString();

    private static readonly Dictionary<string, (string Text, string Expected)> Files = new()
    {
        ["open brackets"] = (Times("[", 50_000), "1:33: values are nested deeper than 32 levels"),
        ["open brackets on many lines"] = (Times("[\n", 100_000), "33:1: values are nested deeper than 32 levels"),
        ["open braces"] = (Times("{a: ", 15_000), "1:129: values are nested deeper than 32 levels"),
        ["dashes"] = (Times("- ", 30_000), "1:65: values are nested deeper than 32 levels"),
        ["question marks"] = (Times("? ", 30_000), "1:65: values are nested deeper than 32 levels"),
        ["nested mappings"] = (string.Concat(Enumerable.Range(0, 300).Select(depth => new string(' ', depth) + "a:\n")), "33:33: values are nested deeper than 32 levels"),
        ["brackets on one line"] = (Times("[", 100_000), "1:1: the line is longer than 65,536 characters"),
        ["long scalar"] = ("a: " + Times("x", 3_000_000), "1:1: the line is longer than 65,536 characters"),
        ["long quoted"] = ("a: \"" + Times("x", 3_000_000) + "\"", "1:1: the line is longer than 65,536 characters"),
        ["long comment"] = ("# " + Times("x", 3_000_000), "1:1: the line is longer than 65,536 characters"),
        ["long key"] = (Times("k", 100_000) + ": 1", "1:1: the line is longer than 65,536 characters"),
        ["long blanks"] = ("a:" + Times(" ", 100_000) + "1", "1:1: the line is longer than 65,536 characters"),
        ["long text in lines"] = ("a: |\n" + Times("  xxxxxxxxx\n", 7_000), "1:4: the value is longer than 65,536 characters"),
        ["keys"] = (string.Concat(Enumerable.Range(0, 120_000).Select(i => $"k{i}: 1\n")), "100000:9: more than 200,000 keys and values in one file"),
        ["aliases"] = ("a: &a 1\nb:\n" + Times("- *a\n", 1_001), "1003:3: more than 1,000 aliases (*name) in one file"),
        ["documents"] = (Times("--- a\n", 50_000), "2:1: the file holds more than one YAML document; a schedule is one"),
        ["scalar of another document"] = ("a: 1\n---\nb: 1\n", "2:1: the file holds more than one YAML document; a schedule is one"),
        ["conflict"] = ("a: 1\n<<<<<<< ours\nb: 1\n=======\nb: 2\n>>>>>>> theirs\n", "2:1: unresolved merge conflict: the editor opens such a file to settle it; or choose one side and delete the marker lines"),
        ["anchor in braces"] = ("a: {b: &x 1, c: 2}\n", "1:8: a value marked &x inside braces is YAML, but cannot be read here; write this mapping without braces, each key on a line of its own"),
    };

    public static TheoryData<string> Names => [.. Files.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_hostile_file_is_refused_with_a_place(string name) =>
        Trees.Problem(() => Trees.Of(Files[name].Text)).ShouldBe(Files[name].Expected);

    [Theory]
    [InlineData(":")]
    [InlineData("?")]
    [InlineData("-")]
    [InlineData("!")]
    [InlineData("&")]
    [InlineData("'")]
    [InlineData(",")]
    [InlineData("\"")]
    [InlineData("*")]
    [InlineData("]")]
    [InlineData("%")]
    [InlineData("| ")]
    [InlineData("<")]
    public void Many_of_one_sign_open_or_are_refused(string sign) =>
        Survives(Times(sign, 60_000 / sign.Length));

    [Theory]
    [InlineData("\n")]
    [InlineData("\r")]
    [InlineData("# c\n")]
    public void A_million_empty_lines_open(string line) => Trees.Of(Times(line, 1_000_000)).Root.ShouldBeNull();

    [Theory]
    [InlineData("a: !System.IO.FileInfo x\n", "!System.IO.FileInfo")]
    [InlineData("a: !!python/object x\n", "tag:yaml.org,2002:python/object")]
    public void A_tag_is_kept_as_a_text_and_nothing_is_made_of_it(string text, string expected) =>
        Trees.Of(text).Node("/a").Tag.ShouldBe(expected);

    [Fact]
    public void A_terminal_s_escape_may_stand_in_a_file_only_in_its_written_form() =>
        Trees.Of("a: \"\\e[2J\"\n").Node("/a").Value.ShouldBe("\u001b[2J");

    [Fact]
    public void The_limits_can_be_lowered() =>
        Trees.Problem(() => YamlTree.Parse(SourceText.FromString("a: {b: 1}\n"), new(Depth: 1))).ShouldBe("1:4: values are nested deeper than 1 levels");

    internal static void Survives(string text)
    {
        try
        {
            Trees.Of(text);
        }
        catch (YamlProblem problem)
        {
            problem.Message.ShouldNotBeEmpty();
            problem.Position.Line.ShouldBeGreaterThan(0);
            problem.Offset.ShouldBeInRange(0, text.Length);
        }
    }
}
