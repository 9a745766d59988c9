using System.Text.Json;

namespace PanelTui.Tests.CommandLine;

public class CalcTests
{
    [Fact]
    public void Json_holds_every_field_of_the_contract()
    {
        using var json = JsonDocument.Parse(Ran.With(Shed.Text, "calc", "-", "--json").Out);
        Names(json.RootElement).ShouldBe(["schema", "output", "panel", "connected", "demand", "feeder", "transfer", "scenarios", "findings", "accepted", "derivations"]);
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
        derivations.Select(it => it.GetProperty("figure").GetString()).ShouldBe(Shed.Snapshot().Assessment!.Figures.AtLeastOne());
        var running = derivations.Single(it => it.GetProperty("figure").GetString() == "running:Night").GetProperty("steps");
        running.EnumerateArray().ShouldContain(step => step.GetProperty("label").GetString() == "Leg A"
            && step.GetProperty("value").GetDecimal() == 480 + 550);
        Names(running[0]).ShouldBe(["label", "value", "unit", "cite", "spaces"]);
    }

    [Fact]
    public void Json_numbers_are_plain_and_a_quotient_has_twelve_digits()
    {
        using var json = JsonDocument.Parse(Ran.With(Shed.Text, "calc", "-", "--json").Out);
        var connected = json.RootElement.GetProperty("connected");
        connected.GetProperty("legs").GetProperty("A").GetProperty("amps").GetDecimal().ShouldBe(12m);
        connected.GetProperty("legs").GetProperty("B").GetProperty("amps").GetDecimal().ShouldBe(14.8333333333m);
        connected.GetProperty("imbalance_percent").GetDecimal().ShouldBe(10.5590062112m);
    }

    [Fact]
    public void No_figure_has_the_tail_of_a_quotient()
    {
        foreach (var name in new[] { "packing-shed", "hillside-house", "lake-cabin", "print-studio", "market-hall" })
        {
            foreach (var verb in (string[][])[["check"], ["check", "--json"], ["calc"], ["calc", "--json"], ["run"], ["run", "--json"], ["transfer"]])
            {
                var ran = Ran.Of([verb[0], Shed.Example(name), .. verb[1..]]);
                ran.Out.ShouldNotMatch(@"\d{2,}\.\d{13,}|\.\d{16,}", $"{verb[0]} {name}");
                if (!verb.Contains("--json")) ran.Out.ShouldNotMatch(@"\d\.\d{5,}", $"{verb[0]} {name}");
            }
        }
    }

    [Fact]
    public void A_motor_wire_may_have_a_breaker_above_its_ampacity_and_says_by_which_section()
    {
        var why = Ran.Of("calc", Shed.Example("packing-shed"), "--why", "branch:2").Out;
        why.ShouldMatch(@"12 AWG Cu: largest device, as for the motor +30\.00 A   NEC 2023 240\.4\(G\)");
        why.ShouldNotContain("240.4(B)");
    }

    [Fact]
    public void Where_no_drop_is_worked_out_there_is_no_figure_of_it()
    {
        var why = Ran.Of("calc", Shed.Example("packing-shed"), "--why", "branch:2").Out;
        why.ShouldContain("no drop is worked out");
        why.ShouldNotContain("0.00 %");
        using var json = JsonDocument.Parse(Ran.Of("calc", Shed.Example("packing-shed"), "--json").Out);
        json.RootElement.GetProperty("derivations").EnumerateArray().Single(figure => figure.GetProperty("figure").GetString() == "branch:2")
            .GetProperty("steps").EnumerateArray().Last().GetProperty("value").ValueKind.ShouldBe(JsonValueKind.Null);
    }

    [Fact]
    public void Starts_cite_the_edition_of_the_file()
    {
        var why = Ran.With(File.ReadAllText(Shed.Example("packing-shed")).Replace("edition: 2023", "edition: 2017", StringComparison.Ordinal), "calc", "-", "--why", "starting:Harvest night").Out;
        why.ShouldContain("NEC 2017 Table 430.248");
        why.ShouldNotContain("NEC 2023");
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
        foreach (var figure in Shed.Snapshot().Assessment!.Figures.AtLeastOne())
        {
            var ran = Ran.With(Shed.Text, "calc", "-", "--why", figure);
            ran.Code.ShouldBe(0);
            ran.Out.Split('\n').Length.ShouldBeGreaterThan(2, figure);
        }

        Ran.With(Shed.Text, "calc", "-", "--why", "minimum-ampacity").Out.ShouldContain("430.24");
    }

    [Fact]
    public void A_figure_that_is_not_there_is_guessed() =>
        Ran.With(Shed.Text, "calc", "-", "--why", "imbalanse").Error.ShouldContain("did you mean imbalance? The figures are");

    private static IEnumerable<string> Names(JsonElement element) => element.EnumerateObject().Select(property => property.Name);
}
