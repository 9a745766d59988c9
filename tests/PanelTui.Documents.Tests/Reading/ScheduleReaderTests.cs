using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>What a person may write, and what it means.</summary>
public class ScheduleReaderTests
{
    private const string Header = Schedules.Header + "circuits:\n";

    [Theory]
    [InlineData("yes", true)]
    [InlineData("No", false)]
    [InlineData("TRUE", true)]
    [InlineData("false", false)]
    [InlineData("\"yes\"", true)]
    public void Yes_and_no_and_true_and_false_are_booleans_in_any_case(string text, bool tied) =>
        Schedules.Circuit($"{{space: 1, breaker: 20 A, tied: {text}}}").Tied.ShouldBe(tied);

    [Theory]
    [InlineData("120/240 V 1ph 3W", "120/240 V 1ph 3W")]
    [InlineData("120/240V 1PH 3w", "120/240 V 1ph 3W")]
    [InlineData("208Y/120 V 3ph 4W", "208Y/120 V 3ph 4W")]
    public void A_system_is_read_whatever_its_blanks_and_letters(string text, string system) =>
        Schedules.Read($"schedule: 1\npanel: {{system: {text}, spaces: 4}}").Panel.System.Name.ShouldBe(system);

    [Theory]
    [InlineData("N")]
    [InlineData("010")]
    [InlineData("12:30")]
    [InlineData("1e3")]
    [InlineData("true")]
    public void A_name_is_the_words_that_stand_there(string name) =>
        Schedules.Circuit($"{{space: 1, breaker: 20 A, name: {name}}}").Name.ShouldBe(name);

    [Fact]
    public void A_tandem_half_is_a_space() =>
        Schedules.Circuit("{space: 17a, breaker: 20 A}").Space.ShouldBe(new SpaceNumber(17, SpaceHalf.A));

    [Fact]
    public void A_spare_breaker_needs_no_name() =>
        Schedules.Circuit("{space: 9, breaker: 20 A, spare: yes}").IsSpare.ShouldBeTrue();

    [Theory]
    [InlineData("all", true, "")]
    [InlineData("[a]", false, "a")]
    [InlineData("a", false, "a")]
    [InlineData("[all, b]", true, "b")]
    [InlineData("[]", false, "")]
    public void A_scenario_runs_all_or_what_it_names(string running, bool all, string named)
    {
        var scenario = Scenario($"running: {running}");
        scenario.RunsAll.ShouldBe(all);
        string.Join(' ', scenario.Running).ShouldBe(named);
    }

    [Fact]
    public void A_scenario_that_names_nothing_runs_all() => Scenario("except: [b]").RunsAll.ShouldBeTrue();

    [Fact]
    public void Usual_values_can_be_written_once_and_repeated()
    {
        var circuits = Schedules.Read(
            $"{Header}  - &usual {{space: 1, breaker: 15 A, wire: 14 AWG Cu}}\n  - {{<<: *usual, space: 3}}\n")
            .Circuits;
        circuits[1].Space.ShouldBe(new SpaceNumber(3));
        $"{circuits[1].Breaker.Rating} {circuits[1].Wire}".ShouldBe("15 A 14 AWG Cu");
    }

    [Fact]
    public void An_error_in_what_is_repeated_is_told_once() =>
        Schedules.Snapshot(
            $"{Header}  - &usual {{space: 1, breaker: 15}}\n"
            + "  - {<<: *usual, space: 3}\n  - {<<: *usual, space: 5}\n")
            .Diagnostics.Length.ShouldBe(1);

    [Fact]
    public void No_more_than_a_hundred_diagnostics_are_shown_and_errors_come_before_notes()
    {
        var notes = string.Concat(Enumerable.Range(0, 150).Select(number => $"  key{number}: 1\n"));
        var snapshot = Schedules.Snapshot($"schedule: 1\npanel:\n{notes}  system: 120/240 V 1ph 3W\n  spaces: many\n");
        snapshot.Diagnostics.Length.ShouldBe(100);
        snapshot.Diagnostics.Count(found => found.IsError).ShouldBe(1);
        snapshot.Diagnostics[^1].Message.ShouldBe("52 more are not shown");
    }

    [Fact]
    public void An_empty_file_leads_to_the_command_that_starts_one() =>
        Schedules.Snapshot("").Diagnostics.ShouldHaveSingleItem().Message.ShouldContain("paneltui new");

    [Fact]
    public void The_text_alone_decides()
    {
        var (once, again) = (Schedules.Read(Schedules.EveryKey), Schedules.Read(Schedules.EveryKey));
        Facts.Of(again).ShouldBe(Facts.Of(once));
    }

    [Theory]
    [InlineData("circuits/1/breaker", "20 A")]
    [InlineData("circuits/0/loads/0/start", "5x")]
    [InlineData("panel/bus", "125 A")]
    public void A_fact_leads_to_its_place(string path, string text)
    {
        var snapshot = Schedules.Snapshot(Schedules.EveryKey);
        snapshot.Source.Slice(snapshot.Places.SpanOf(Schedules.Path(path))).ShouldBe(text);
    }

    [Fact]
    public void A_fact_that_is_not_written_leads_to_what_is_next_above_it()
    {
        var snapshot = Schedules.Snapshot($"{Header}  - {{space: 1, breaker: 20 A}}\n");
        snapshot.Places.SpanOf(YamlPath.Of("circuits", 0, "wire")).ShouldBe(snapshot.Places.SpanOf(YamlPath.Of("circuits", 0)));
    }

    [Fact]
    public void A_space_leads_to_the_circuits_that_hold_it()
    {
        var snapshot = Schedules.Snapshot(
            $"{Header}  - {{space: 1, breaker: 30 A, poles: 2}}\n  - {{space: 3, breaker: 20 A}}\n");
        snapshot.Places.CircuitsAt([new(3)]).Select(circuit => circuit.Ordinal).ShouldBe([0, 1]);
    }

    [Fact]
    public void A_byte_order_mark_is_no_part_of_the_schedule() =>
        Snapshot.Of(SourceText.FromString(Schedules.Header, hasBom: true)).Diagnostics.ShouldBeEmpty();

    private static Scenario Scenario(string keys) => Schedules.Read(
        $"{Header}  - {{id: a, space: 1, breaker: 20 A}}\n  - {{id: b, space: 3, breaker: 20 A}}\n"
        + $"scenarios:\n  - name: One\n    {keys}\n")
        .Scenarios.ShouldHaveSingleItem();
}
