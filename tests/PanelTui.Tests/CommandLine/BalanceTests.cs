using System.Text.Json;

namespace PanelTui.Tests.CommandLine;

public class BalanceTests
{
    [Fact]
    public void The_best_plan_is_told_with_legs_before_and_after_and_the_caution()
    {
        var ran = Ran.Of("balance", Shed.Example("packing-shed"));
        ran.Code.ShouldBe(0);
        ran.Out.ShouldContain("    2     0.23 %   A   5226 VA  B   5250 VA   best, proven");
        ran.Out.ShouldContain("Scales and label printer           9 (A) to 11 (B)");
        ran.Out.ShouldContain("Leg A: 5676 VA before, 5226 VA after");
        ran.Out.ShouldContain("Work de-energised");
        ran.Out.Lines().ShouldAllBe(line => line.Length <= 80);
    }

    [Fact]
    public void Json_has_the_fields_of_the_contract()
    {
        using var json = JsonDocument.Parse(Ran.Of("balance", Shed.Example("packing-shed"), "--json", "--by", "scenario", "Harvest night").Out);
        var root = json.RootElement;
        root.GetProperty("by").GetString().ShouldBe("scenario Harvest night");
        root.GetProperty("now_percent").GetDecimal().ShouldBeGreaterThan(0);
        var last = root.GetProperty("frontier").EnumerateArray().Last();
        last.GetProperty("proven").GetBoolean().ShouldBeTrue();
        last.GetProperty("bound_percent").GetDecimal().ShouldBe(last.GetProperty("imbalance_percent").GetDecimal());
        var steps = last.GetProperty("steps").EnumerateArray().ToList();
        steps.Count.ShouldBe(last.GetProperty("moves").GetInt32());
        steps[0].GetProperty("circuit").GetString().ShouldBe("office-outlets");
        (steps[0].GetProperty("from").GetString(), steps[0].GetProperty("to").GetString()).ShouldBe(("6", "15"));
    }

    [Fact]
    public void Writing_changes_the_spaces_of_what_is_moved_and_nothing_else()
    {
        using var folder = new TempFolder();
        var before = File.ReadAllText(Shed.Example("packing-shed"));
        var file = folder.File("shed.panel.yaml", before);
        Ran.Of("balance", file, "--moves", "2", "--write").Code.ShouldBe(0);
        var after = File.ReadAllText(file);
        before.Split('\n').Zip(after.Split('\n')).Where(pair => pair.First != pair.Second)
            .ShouldBe([("    space: 9", "    space: 11"), ("    space: 11", "    space: 9")]);
        Ran.Of("balance", file).Out.ShouldContain("No plan is better than the panel as it is.");
    }

    [Fact]
    public void Without_write_the_file_stays_and_the_page_says_so()
    {
        using var folder = new TempFolder();
        var file = folder.File("shed.panel.yaml", Shed.Text);
        Ran.Of("balance", file).Out.ShouldContain("Nothing was written");
        File.ReadAllText(file).ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_fixed_breaker_stays_and_is_named()
    {
        var text = Shed.Text.Replace("    name: Shed lights  ", "    fixed: yes\n    name: Shed lights  ", StringComparison.Ordinal);
        var ran = Ran.With(text, "balance", "-");
        ran.Out.ShouldContain("1 Shed lights: written down as fixed");
        ran.Out.ShouldNotContain("Shed lights                        1 (A) to");
    }

    [Theory]
    [InlineData("--by scenario Nowhere", "has no scenario Nowhere")]
    [InlineData("--by sideways", "'--by' does not take 'sideways'; use connected, demand, worst or scenario NAME")]
    [InlineData("--by scenario", "needs the scenario's name")]
    [InlineData("--by demand more", "'more' is one word too many after '--by demand'")]
    [InlineData("--dry-run", "'--dry-run' goes with that")]
    [InlineData("--write", "standard input cannot be written to")]
    [InlineData("--seconds 0", "'--seconds' is above 0")]
    public void What_cannot_be_done_is_one_sentence(string words, string sentence)
    {
        var ran = Ran.With(Shed.Text, ["balance", "-", .. words.Split(' ')]);
        ran.Code.ShouldBe(2);
        ran.Out.ShouldBeEmpty();
        ran.Error.ShouldContain(sentence);
    }
}
