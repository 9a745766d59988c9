using System.Text.Json;

namespace PanelTui.Tests.CommandLine;

public class CalcTests
{
    [Fact]
    public void Json_holds_every_field_of_the_contract()
    {
        using var json = JsonDocument.Parse(Ran.With(Shed.Text, "calc", "-", "--json").Out);
        Names(json.RootElement).ShouldBe(["schema", "panel", "connected", "demand", "feeder", "transfer", "scenarios", "findings", "accepted", "derivations"]);
        Names(json.RootElement.GetProperty("panel")).ShouldBe(["name", "system", "spaces", "poles_used", "poles_open"]);
        Names(json.RootElement.GetProperty("connected")).ShouldBe(["va", "legs", "neutral_amps", "imbalance_percent"]);
        Names(json.RootElement.GetProperty("demand")).ShouldBe(
            ["method", "va", "amps", "legs", "neutral_va", "neutral_amps", "minimum_ampacity", "steps"]);
        Names(json.RootElement.GetProperty("feeder")).ShouldBe(["required_amps", "standard_ocpd", "conductor", "voltage_drop_percent"]);
        Names(json.RootElement.GetProperty("transfer")).ShouldBe(["required_amps", "standard_rating", "stated_rating", "ok"]);
        Names(json.RootElement.GetProperty("scenarios")[0]).ShouldBe(
            ["name", "legs", "neutral_amps", "worst_start", "average_w", "hours_to_reserve", "ok"]);
    }

    [Fact]
    public void Json_tells_of_every_figure_how_it_came_about()
    {
        using var json = JsonDocument.Parse(Ran.With(Shed.Text, "calc", "-", "--json").Out);
        var derivations = json.RootElement.GetProperty("derivations").EnumerateArray().ToList();
        derivations.Select(it => it.GetProperty("figure").GetString()).ShouldBe(Shed.Snapshot().Assessment!.Figures);
        var running = derivations.Single(it => it.GetProperty("figure").GetString() == "running:Night").GetProperty("steps");
        running.EnumerateArray().ShouldContain(step => step.GetProperty("label").GetString() == "Leg A"
            && step.GetProperty("value").GetDecimal() == 480 + 550);
        Names(running[0]).ShouldBe(["label", "value", "unit", "cite", "spaces"]);
    }

    [Fact]
    public void Json_numbers_are_plain_and_unrounded()
    {
        using var json = JsonDocument.Parse(Ran.With(Shed.Text, "calc", "-", "--json").Out);
        var connected = json.RootElement.GetProperty("connected");
        connected.GetProperty("legs").GetProperty("A").GetProperty("amps").GetDecimal().ShouldBe(12m);
        connected.GetProperty("legs").GetProperty("B").GetProperty("amps").GetDecimal().ShouldBe(1780m / 120);
        connected.GetProperty("imbalance_percent").GetDecimal().ShouldBe(100 * 170m / 1610);
    }

    [Fact]
    public void The_page_for_people_tells_each_line_of_the_demand_with_its_section()
    {
        var ran = Ran.With(Shed.Text.Replace("method: selected", "method: non-dwelling", StringComparison.Ordinal), "calc", "-");
        ran.Code.ShouldBe(0);
        ran.Out.ShouldContain("Receptacles, first 10000 VA                    720 VA             NEC 2023 220.47");
        ran.Out.ShouldContain("Not a substitute for the code in force");
    }

    [Fact]
    public void Json_names_the_feeder_conductor_and_its_drop()
    {
        using var json = JsonDocument.Parse(Ran.Of("calc", Shed.Example("packing-shed"), "--json").Out);
        var feeder = json.RootElement.GetProperty("feeder");
        feeder.GetProperty("conductor").GetString().ShouldBe("6 AWG Cu");
        feeder.GetProperty("voltage_drop_percent").GetDecimal().ShouldBe(100 * 54.6m * 0.491m * 0.045m / 120);
    }

    [Fact]
    public void Without_a_length_the_drop_is_null_and_the_page_says_why()
    {
        using var json = JsonDocument.Parse(Ran.With(Shed.Text, "calc", "-", "--json").Out);
        json.RootElement.GetProperty("feeder").GetProperty("voltage_drop_percent").ValueKind.ShouldBe(JsonValueKind.Null);
        Ran.With(Shed.Text, "calc", "-").Out.ShouldContain("no length stated");
    }

    [Fact]
    public void What_cannot_be_read_prints_nothing_on_standard_output()
    {
        var ran = Ran.With("schedule: 1\npanel: {system: 120/240 V 1ph 3W}\n", "calc", "-", "--json");
        ran.Code.ShouldBe(2);
        ran.Out.ShouldBeEmpty();
        ran.Error.ShouldContain("standard input:2:");
        ran.Error.ShouldContain("spaces");
    }

    [Fact]
    public void Every_figure_answers_why_with_its_sections()
    {
        foreach (var figure in Shed.Snapshot().Assessment!.Figures)
        {
            var ran = Ran.With(Shed.Text, "calc", "-", "--why", figure);
            ran.Code.ShouldBe(0);
            ran.Out.Split('\n').Length.ShouldBeGreaterThan(2, figure);
        }

        Ran.With(Shed.Text, "calc", "-", "--why", "minimum-ampacity").Out.ShouldContain("430.24");
    }

    [Fact]
    public void A_figure_that_is_not_there_is_guessed() =>
        Ran.With(Shed.Text, "calc", "-", "--why", "imbalanse").Error.ShouldContain("did you mean imbalance?");

    private static IEnumerable<string> Names(JsonElement element) => element.EnumerateObject().Select(property => property.Name);
}
