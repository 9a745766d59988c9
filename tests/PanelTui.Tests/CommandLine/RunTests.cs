using System.Text.Json;

namespace PanelTui.Tests.CommandLine;

public class RunTests
{
    [Fact]
    public void The_page_fits_80_columns_in_plain_ASCII()
    {
        foreach (var name in new[] { "packing-shed", "hillside-house", "lake-cabin", "print-studio" })
        {
            var ran = Ran.Of("run", Shed.Example(name), "--table", "--from", "80%");
            ran.Code.ShouldBe(0, name);
            var lines = ran.Out.Split('\n');
            lines.Length.ShouldBeGreaterThan(30, name);
            lines.Where(line => line.Length > 80).ShouldBeEmpty(name);
            ran.Out.Where(letter => letter is not ('\n' or (>= ' ' and <= '~'))).ShouldBeEmpty(name);
        }
    }

    [Fact]
    public void No_page_says_that_a_thing_is_safe()
    {
        foreach (var name in new[] { "packing-shed", "hillside-house", "lake-cabin", "print-studio" })
            Ran.Of("run", Shed.Example(name), "--table", "--from", "80%").Out.ShouldNotContain("safe", Case.Insensitive);
    }

    [Fact]
    public void The_first_scenario_is_run_and_all_stand_below_it()
    {
        var ran = Ran.Of("run", Shed.Example("packing-shed"));
        ran.Out.ShouldContain("Packing shed standby: Harvest night");
        ran.Out.ShouldContain("Nearest limit: leg A, continuous power: 68.0 % of it, 1600 W left.");
        ran.Out.ShouldContain("Sunday, nobody in");
    }

    [Fact]
    public void A_scenario_that_is_not_there_is_guessed()
    {
        var ran = Ran.Of("run", Shed.Example("packing-shed"), "--scenario", "Harvest nigt");
        ran.Code.ShouldBe(2);
        ran.Error.ShouldContain("did you mean Harvest night?");
    }

    [Fact]
    public void A_scenario_that_nothing_is_like_ends_its_sentence() =>
        Ran.Of("run", Shed.Example("packing-shed"), "--scenario", "nope").Error.ShouldContain("there is no scenario 'nope'. The file has Harvest night");

    /// <summary>72 A x 240 V / 2 on each leg are 8.64 kVA of 10; 34.8 A x 120 V are 4.18 kVA of 4.5.</summary>
    [Theory]
    [InlineData("packing-shed", "Cold room condensing unit with the rest off: 8.64 kVA on A, within surge. For its start have off at least: Office receptacles, Scales and label printer")]
    [InlineData("hillside-house", "Boiler and circulators with the rest off: 4.18 kVA on A, within surge. For its start have off at least:")]
    [InlineData("lake-cabin", "Lake water pump even with the rest off: 5.18 kVA on A, BEYOND SURGE. A soft starter, or leave it off.")]
    public void A_start_that_is_too_much_comes_with_what_it_asks_alone_and_a_way_out(string example, string words)
    {
        var page = Spaced(Ran.Of("run", Shed.Example(example)).Out);
        page.ShouldContain(words);
        page.ShouldNotContain("by itself");
        page.ShouldNotContain("see the easiest order");
    }

    [Theory]
    [InlineData("packing-shed", false)]
    [InlineData("hillside-house", false)]
    [InlineData("market-hall", true)]
    public void Only_equipment_that_closes_by_itself_is_told_what_it_closes_on(string example, bool told) =>
        Ran.Of("run", Shed.Example(example)).Out.Contains("All in one moment", StringComparison.Ordinal).ShouldBe(told);

    [Fact]
    public void Without_a_surge_a_start_is_within_continuous_power_or_above_it_and_not_to_be_told()
    {
        var text = Shed.Text.Replace("continuous_per_leg: 5 kW", "continuous_per_leg: 5 kW, surge_per_leg: 10 kW", StringComparison.Ordinal);
        var within = Spaced(Ran.With(text, "run", "-").Out);
        within.ShouldContain("A surge without its time (surge_time) is worth nothing: a start within continuous power needs none, one above it is not to be told.");
        Spaced(Ran.With(text.Replace("running: 1100 W", "running: 1100 W, start: 2x", StringComparison.Ordinal), "run", "-").Out).ShouldContain("within continuous");
        within.ShouldContain("above continuous");
        within.ShouldContain("Well pump even with the rest off: 5.76 kVA on A, above continuous, so not to be told");
        within.ShouldNotContain("held against");
    }

    [Theory]
    [InlineData("--from", "120%")]
    [InlineData("--from", "full")]
    [InlineData("--at", "24")]
    public void A_state_of_charge_or_an_hour_that_cannot_be_is_refused(string option, string value)
    {
        var ran = Ran.Of("run", Shed.Example("packing-shed"), option, value);
        ran.Code.ShouldBe(2);
        ran.Error.ShouldContain("80%");
    }

    [Fact]
    public void Json_has_72_hours_whose_energy_adds_up()
    {
        using var json = JsonDocument.Parse(Ran.Of("run", Shed.Example("packing-shed"), "--scenario", "Harvest night", "--from", "80%", "--json").Out);
        var hours = json.RootElement.GetProperty("scenarios")[0].GetProperty("course").EnumerateArray().ToList();
        hours.Count.ShouldBe(72);
        foreach (var hour in hours)
        {
            var came = Of(hour, "sun_wh") + Of(hour, "supplied_wh");
            var went = Of(hour, "wanted_wh") - Of(hour, "missed_wh") + Of(hour, "spilled_wh") + Of(hour, "idle_wh") + Of(hour, "lost_wh") + Of(hour, "stored_wh");
            went.ShouldBe(came, 1e-6m);
        }
    }

    [Fact]
    public void The_course_is_an_outage_unless_the_grid_is_asked_for_and_the_other_is_told_in_a_line()
    {
        var outage = Ran.Of("run", Shed.Example("packing-shed")).Out;
        outage.ShouldContain("in an outage, the grid gone:");
        outage.ShouldContain("With the grid there to charge from 25 % to 35 %: missed 0.0 kWh");
        Ran.Of("run", Shed.Example("packing-shed"), "--outage").Out.ShouldBe(outage);
        var grid = Ran.Of("run", Shed.Example("packing-shed"), "--grid").Out;
        grid.ShouldContain("the grid there to charge from 25 % to 35 %:");
        grid.ShouldContain("In an outage, with the grid gone: missed");
        Ran.Of("run", Shed.Example("packing-shed"), "--grid", "--outage").Code.ShouldBe(2);
    }

    [Fact]
    public void A_generator_that_charges_is_there_in_an_outage_unless_it_is_taken_away()
    {
        var text = File.ReadAllText(Shed.Example("packing-shed")).Replace("from: grid", "from: generator", StringComparison.Ordinal);
        var usual = Ran.With(text, "run", "-").Out;
        usual.ShouldContain("the generator there to charge");
        usual.ShouldContain("With the generator gone too: missed");
        Ran.With(text, "run", "-", "--outage").Out.ShouldContain("grid and generator gone:");
    }

    [Fact]
    public void Json_stages_the_starts_of_a_market_hall_so_that_each_stage_fits()
    {
        using var json = JsonDocument.Parse(Ran.Of("run", Shed.Example("market-hall"), "--scenario", "Market day", "--json").Out);
        var day = json.RootElement.GetProperty("scenarios")[0];
        day.GetProperty("all_at_once").GetProperty("ok").GetBoolean().ShouldBeFalse();
        var stages = day.GetProperty("start_stages").EnumerateArray().ToList();
        stages.ShouldAllBe(stage => stage.GetProperty("ok").GetBoolean());
        stages.SelectMany(stage => Ids(stage.GetProperty("ids"))).Order()
            .ShouldBe(day.GetProperty("starts").EnumerateArray().Select(start => start.GetProperty("id").GetString()).Order());
        stages.Count.ShouldBeGreaterThan(1);
    }

    [Fact]
    public void Json_tells_what_goes_dark_with_each_unit_and_what_the_other_carries_alone()
    {
        using var json = JsonDocument.Parse(Ran.Of("run", Shed.Example("packing-shed"), "--scenario", "Harvest night", "--json").Out);
        var one = json.RootElement.GetProperty("scenarios")[0].GetProperty("one_unit");
        Ids(one.GetProperty("stops").GetProperty("B").GetProperty("dark")).ShouldBe(["network"]);
        Ids(one.GetProperty("alone_in_phase").GetProperty("dead")).ShouldBe(["cold-room", "well-pump"]);
        one.GetProperty("alone_in_phase").GetProperty("running_w").GetDecimal().ShouldBe(2250);
        using var single = JsonDocument.Parse(Ran.Of("run", Shed.Example("hillside-house"), "--json").Out);
        single.RootElement.GetProperty("scenarios")[0].GetProperty("one_unit").ValueKind.ShouldBe(JsonValueKind.Null);
    }

    [Fact]
    public void Calc_tells_the_worst_start_the_average_and_the_hours()
    {
        using var json = JsonDocument.Parse(Ran.Of("calc", Shed.Example("packing-shed"), "--json").Out);
        var night = json.RootElement.GetProperty("scenarios")[0];
        var worst = night.GetProperty("worst_start");
        worst.GetProperty("id").GetString().ShouldBe("cold-room");
        worst.GetProperty("legs").GetProperty("A").GetProperty("limit_va").GetDecimal().ShouldBe(10_000);
        worst.GetProperty("ok").GetBoolean().ShouldBeFalse();
        night.GetProperty("hours_to_reserve").GetDecimal().ShouldBe(9000 / ((night.GetProperty("average_w").GetDecimal() / 0.88m) + 60), 1e-9m);
    }

    [Theory]
    [InlineData("interlock", "Slide the interlock, then the back-fed breaker of the source ON")]
    [InlineData("manual", "Transfer switch from the grid through OFF to the source")]
    [InlineData("automatic", "wait: the inverters take over by themselves")]
    public void The_steps_follow_the_transfer_equipment_and_begin_with_what_must_never_happen(string kind, string step)
    {
        var text = Shed.Text.Replace("kind: manual", $"kind: {kind}", StringComparison.Ordinal);
        var lines = Ran.With(text, "transfer", "-").Out;
        Spaced(lines).ShouldContain(step);
        lines.IndexOf("Never join two supplies", StringComparison.Ordinal).ShouldBeLessThan(lines.IndexOf("TO STANDBY", StringComparison.Ordinal));
        Spaced(lines).ShouldContain("The instructions of the equipment and local rules go before this page.");
    }

    [Fact]
    public void On_one_120_V_unit_a_shared_neutral_is_a_danger_and_named()
    {
        var text = Shed.Text.Replace("arrangement: split", "arrangement: in-phase", StringComparison.Ordinal)
            .Replace("name: Shed lights", "multiwire: bench\n    name: Shed lights", StringComparison.Ordinal)
            .Replace("space: 3,", "space: 3, multiwire: bench,", StringComparison.Ordinal);
        var lines = Spaced(Ran.With(text, "run", "-").Out);
        lines.ShouldContain("DANGER Shed lights, Bench receptacles: shared neutral.");
        lines.ShouldContain("up to 35 A");
        lines.ShouldContain("these stand still: Well pump.");
    }

    [Fact]
    public void Cables_are_joined_with_both_supplies_and_solar_off()
    {
        var steps = Ran.Of("transfer", Shed.Example("packing-shed")).Out;
        steps.ShouldContain("Both supplies off first");
        steps.ShouldContain("Solar off");
    }

    [Fact]
    public void A_neutral_bonded_twice_stops_the_reader_before_every_step()
    {
        var text = Shed.Text.Replace("kind: manual, rating: 50 A", "kind: manual, rating: 50 A, switches_neutral: no", StringComparison.Ordinal)
            .Replace("arrangement: split,", "arrangement: split, neutral: bonded,", StringComparison.Ordinal);
        var page = Spaced(Ran.With(text, "transfer", "-").Out);
        page.ShouldContain("STOP, do not switch over: by this schedule the neutral is bonded twice (at the service and at the source) on standby.");
        page.IndexOf("STOP", StringComparison.Ordinal).ShouldBeLessThan(page.IndexOf("NEVER", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_transfer_equipment_there_are_no_steps()
    {
        var text = Shed.Text.Replace("transfer: {kind: manual, rating: 50 A}\n", "", StringComparison.Ordinal);
        Spaced(Ran.With(text, "transfer", "-").Out).ShouldContain("do not connect the source");
    }

    private static List<string?> Ids(JsonElement list) => [.. list.EnumerateArray().Select(id => id.GetString())];

    private static string Spaced(string lines) => string.Join(' ', lines.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static decimal Of(JsonElement hour, string name) => hour.GetProperty(name).GetDecimal();
}
