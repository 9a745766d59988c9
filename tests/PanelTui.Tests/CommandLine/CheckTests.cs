using System.Text.Json;

namespace PanelTui.Tests.CommandLine;

public class CheckTests
{
    [Fact]
    public void A_schedule_with_nothing_wrong_exits_with_0() =>
        Ran.With(Shed.Text, "check", "-").ShouldBe(new Ran(0, "standard input: no findings; what the file does not state was not checked\n", ""));

    [Fact]
    public void Two_circuits_in_one_space_are_an_error_that_names_both_lines()
    {
        var ran = Ran.With(Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal), "check", "-");
        ran.Code.ShouldBe(1);
        ran.Out.ShouldStartWith("standard input:17:12: error: Bench receptacles at space 1 takes space 1, which Shed lights at space 1 takes already. (also line 23) [space-taken-twice]");
    }

    [Fact]
    public void A_finding_on_several_lines_names_them_once()
    {
        var ran = Ran.Of("check", Shed.Example("market-hall"));
        ran.Out.ShouldContain(" (also lines 42, 43,");
        ran.Out.ShouldNotContain(") (also");
    }

    [Fact]
    public void A_file_about_something_else_is_told_so() => Ran.With("services:\n  web: {image: site}\n", "check", "-").Out
        .ShouldStartWith("standard input:1:1: error: this is YAML, but not a schedule of a panel: it has none of schedule, panel,");

    [Fact]
    public void A_file_that_cannot_be_read_as_a_schedule_exits_with_2_and_names_line_column_and_what_was_expected()
    {
        var ran = Ran.With(Shed.Text.Replace("breaker: 15 A\n", "breaker: 15\n", StringComparison.Ordinal), "check", "-");
        ran.ShouldBe(new Ran(2, """
            standard input:19:14: error: breaker is "15", a number without a unit; write it as on the handle, e.g. 15 A [bad-value]
            standard input: not readable as a schedule

            """, ""));
    }

    [Fact]
    public void A_file_that_is_not_there_is_one_sentence_on_standard_error()
    {
        var ran = Ran.Of("check", "no-such-file.panel.yaml");
        ran.ShouldBe(new Ran(2, "", "paneltui: there is no file 'no-such-file.panel.yaml'\n"));
    }

    [Fact]
    public void Of_several_files_the_worst_decides_the_exit_code()
    {
        using var folder = new TempFolder();
        var good = folder.File("good.panel.yaml", Shed.Text);
        var broken = folder.File("broken.panel.yaml", "circuits: [");
        Ran.Of("check", good).Code.ShouldBe(0);
        Ran.Of("check", good, broken).Code.ShouldBe(2);
    }

    [Fact]
    public void Several_files_end_in_a_line_that_sums_them_up()
    {
        using var folder = new TempFolder();
        var good = folder.File("good.panel.yaml", Shed.Text);
        var clash = folder.File("clash.panel.yaml", Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal));
        var broken = folder.File("broken.panel.yaml", "circuits: [");
        Ran.Of("check", good, clash).Out.ShouldEndWith("\n2 files: 1 error, 0 warnings, 0 notes\n");
        Ran.Of("check", good, clash, broken, folder.File("none.yaml")).Out.ShouldEndWith("\n4 files: 2 errors, 0 warnings, 0 notes; 2 files not readable\n");
        Ran.Of("check", good).Out.ShouldNotContain("files:");
    }

    [Theory]
    [InlineData("error", "error")]
    [InlineData("warning", "error warning")]
    [InlineData("note", "error warning note")]
    public void Severity_is_the_least_that_is_shown_and_the_exit_code_stays(string lowest, string shown)
    {
        var text = File.ReadAllText(Shed.Example("packing-shed")).Replace("space: 3\n", "space: 1\n", StringComparison.Ordinal);
        var all = Ran.With(text, "check", "-");
        all.Code.ShouldBe(1);
        var ran = Ran.With(text, "check", "-", "--severity", lowest);
        ran.Code.ShouldBe(1);
        Kinds(all.Out).ShouldBe(["error", "note", "warning"]);
        Kinds(ran.Out).ShouldBe(shown.Split(' ').Order());
        ran.Out.Contains("not shown", StringComparison.Ordinal).ShouldBe(lowest != "note");
        using var json = JsonDocument.Parse(Ran.With(text, "check", "-", "--severity", lowest, "--json").Out);
        json.RootElement.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("severity").GetString()!).Distinct().Order()
            .ShouldBe(shown.Split(' ').Order());
    }

    [Fact]
    public void Quiet_prints_nothing_and_the_exit_code_tells()
    {
        var clash = Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal);
        Ran.With(Shed.Text, "check", "-", "--quiet").ShouldBe(new Ran(0, "", ""));
        Ran.With(clash, "check", "-", "-q").ShouldBe(new Ran(1, "", ""));
        Ran.With("circuits: 1\n", "check", "-", "-q").ShouldBe(new Ran(2, "", ""));
    }

    [Theory]
    [InlineData(true, "auto", true)]
    [InlineData(false, "auto", false)]
    [InlineData(false, "always", true)]
    [InlineData(true, "never", false)]
    public void Color_is_for_a_terminal_that_has_it_unless_told_otherwise(bool hasColor, string when, bool painted)
    {
        var ran = Ran.OnScreen(100, hasColor, "check", Shed.Example("packing-shed"), "--color", when);
        ran.Out.Contains("\e[33mwarning\e[0m: ", StringComparison.Ordinal).ShouldBe(painted);
        ran.Out.Contains('\e', StringComparison.Ordinal).ShouldBe(painted);
    }

    [Theory]
    [InlineData(80)]
    [InlineData(41)]
    public void Long_lines_fold_at_the_width_of_a_terminal_and_lose_no_word(int columns)
    {
        var whole = Ran.Of("check", Shed.Example("market-hall")).Out;
        whole.Split('\n').ShouldContain(line => line.Length > 200);
        var folded = Ran.OnScreen(columns, false, "check", Shed.Example("market-hall")).Out;
        folded.Lines().ShouldAllBe(line => line.Length <= columns);
        if (columns >= 80) Words(folded).ShouldBe(Words(whole));
        Ran.OnScreen(columns, false, "check", Shed.Example("market-hall"), "--json").Out.ShouldBe(Ran.Of("check", Shed.Example("market-hall"), "--json").Out);
    }

    [Fact]
    public void A_demand_method_without_a_figure_it_asks_for_is_a_note()
    {
        var ran = Ran.With(Shed.Text.Replace("method: selected", "method: dwelling-optional", StringComparison.Ordinal), "check", "-");
        ran.Code.ShouldBe(0);
        ran.Out.ShouldContain("note:");
        ran.Out.ShouldContain("[demand-lacks-a-figure]");
    }

    [Fact]
    public void Json_gives_every_finding_with_its_place()
    {
        var ran = Ran.With(Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal), "check", "-", "--json");
        using var json = JsonDocument.Parse(ran.Out);
        var finding = json.RootElement.GetProperty("findings")[0];
        finding.GetProperty("rule").GetString().ShouldBe("space-taken-twice");
        finding.GetProperty("line").GetInt32().ShouldBe(17);
        finding.GetProperty("severity").GetString().ShouldBe("error");
    }

    [Fact]
    public void Escape_sequences_from_a_file_never_reach_the_terminal()
    {
        var ran = Ran.With(Shed.Text.Replace("name: Shed lights ", "name: \"\\e]52;c;YQ==\\aShed\" ", StringComparison.Ordinal).Replace("space: 3,", "space: 1,", StringComparison.Ordinal), "check", "-");
        ran.Out.ShouldContain("Shed");
        ran.Out.ShouldNotContain('\e');
        ran.Out.ShouldNotContain('\a');
    }

    private static string[] Kinds(string lines) => [.. lines.Split('\n').Select(line => line.Split(": ")).Where(parts => parts.Length > 2 && parts[0].StartsWith("standard input:", StringComparison.Ordinal))
        .Select(parts => parts[1]).Distinct().Order()];

    private static string[] Words(string lines) => lines.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
