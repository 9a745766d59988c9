using PanelTui.Documents.Comparing;

namespace PanelTui.Documents.Tests.Comparing;

public class ScheduleChangesTests
{
    [Fact]
    public void The_same_text_differs_in_nothing() => Versions.Between(Versions.Shed, Versions.Shed).AreNone.ShouldBeTrue();

    [Theory]
    [InlineData("breaker: 15 A", "breaker: 20 A", "Shed lights (space 1): breaker 20 A, was 15 A")]
    [InlineData("breaker: 15 A", "breaker: 15 A\n    protection: afci", "Shed lights (space 1): protection afci, was not stated")]
    [InlineData("name: Well pump", "name: Deep well pump", "Deep well pump (space 2, 4): name Deep well pump, was Well pump")]
    [InlineData("    space: 1\n", "    space: 5\n", "Shed lights (space 5): moved from space 1 to 5")]
    [InlineData("    space: 1\n", "    space: 7\n", "Shed lights (space 7): moved from space 1 to 7, from leg A to leg B")]
    [InlineData("rating: 480 W", "rating: 500 W", "Shed lights (space 1): load lighting 480 W: rating 500 W, was 480 W")]
    [InlineData("main: 50 A", "main: lugs", "panel: main lugs, was 50 A")]
    [InlineData("feeder: {ocpd: 50 A}", "feeder: {ocpd: 60 A}", "feeder: ocpd 60 A, was 50 A")]
    [InlineData("kind: manual", "kind: automatic", "transfer: kind automatic, was manual")]
    [InlineData("per_leg: 5 kW", "per_leg: 6 kW", "source: continuous per leg 6 kW, was 5 kW")]
    [InlineData("running: [lights, pump]", "running: [lights]", "scenario Night: running lights, was lights, pump")]
    public void A_change_is_told_in_the_words_of_the_trade(string old, string now, string fact) =>
        Versions.Facts((old, now)).ShouldBe([fact]);

    [Fact]
    public void A_circuit_that_came_is_told_with_its_space() =>
        Versions.Facts(("scenarios:", "  - {id: fan, space: 6, name: Fan, breaker: 15 A}\nscenarios:"))
            .ShouldBe(["Fan (space 6): added, 15 A"]);

    [Fact]
    public void A_circuit_that_went_is_told_with_what_it_was() =>
        Versions.Facts(("""
              - id: bench
                space: 3
                name: Bench receptacles
                breaker: 20 A
                loads: [{kind: receptacle, outlets: 4}]

            """.ReplaceLineEndings("\n"), "")).ShouldBe(["Bench receptacles (space 3): removed (20 A, receptacle)"]);

    [Fact]
    public void A_fact_names_spaces_id_key_and_both_values()
    {
        var fact = Versions.Between(Versions.Shed, Versions.With(("breaker: 15 A", "breaker: 20 A"))).Facts.ShouldHaveSingleItem();
        fact.Kind.ShouldBe(ChangeKind.Changed);
        (fact.Id, fact.Key, fact.Before, fact.After).ShouldBe(("lights", "circuits[].breaker", "15 A", "20 A"));
        fact.Spaces.Select(space => $"{space}").ShouldBe(["1"]);
    }

    [Theory]
    [InlineData("# the old fittings", "# the new fittings", "only comments changed, nothing about the panel")]
    [InlineData("name: Well pump", "name: \"Well pump\"", "only the spelling, order or layout changed, nothing about the panel")]
    [InlineData("breaker: 15 A", "breaker: 0.015 kA", "only the spelling, order or layout changed, nothing about the panel")]
    [InlineData("\n", "\r\n", "only line ends or the byte order mark changed, nothing about the panel")]
    public void What_says_nothing_about_the_panel_is_told_as_such(string old, string now, string fact) =>
        Versions.Facts((old, now)).ShouldBe([fact]);

    [Fact]
    public void A_circuit_is_the_same_by_its_id_wherever_it_stands_and_whatever_it_is_called() =>
        Versions.Facts(("space: 3\n    name: Bench receptacles", "space: 8\n    name: Workbench"))
            .ShouldBe(["Workbench (space 8): moved from space 3 to 8", "Workbench (space 8): name Workbench, was Bench receptacles"]);

    [Theory]
    [InlineData("name: Bench receptacles", "name: Workbench", "Workbench (space 3): name Workbench, was Bench receptacles")]
    [InlineData("space: 3", "space: 5", "Bench receptacles (space 5): moved from space 3 to 5, from leg B to leg A")]
    public void A_circuit_without_an_id_is_the_same_by_its_loads_in_one_space_or_by_its_name(string old, string now, string fact) =>
        Without(now: (old, now)).ShouldBe([fact]);

    [Fact]
    public void Another_name_and_other_loads_in_one_space_are_another_circuit() =>
        Without(now: ("name: Bench receptacles\n    breaker: 20 A\n    loads: [{kind: receptacle, outlets: 4}]", "name: Gate\n    breaker: 20 A"))
            .ShouldBe(["Bench receptacles (space 3): removed (20 A, receptacle)", "Gate (space 3): added, 20 A"]);

    [Theory]
    [InlineData("20", "Well pump (space 2, 4, 6): poles 20, was 2")]
    [InlineData("0", "Well pump (space 2): poles 0, was 2")]
    public void A_breaker_with_poles_that_none_has_is_named_by_one_to_three_spaces(string poles, string fact) =>
        Versions.Facts(("poles: 2", $"poles: {poles}")).ShouldBe([fact]);

    private static string[] Without((string Old, string New) now)
    {
        var before = Versions.With(("- id: bench\n    space", "- space"));
        return [.. Versions.Between(before, before.Replace(now.Old, now.New, StringComparison.Ordinal)).Facts.Select(fact => $"{fact}")];
    }

    [Fact]
    public void Findings_that_came_are_told_and_the_others_are_not()
    {
        var changes = Versions.Between(Versions.Shed, Versions.With(("    space: 3\n", "    space: 2\n")));
        changes.Came.Select(finding => finding.Rule).ShouldContain("space-taken-twice");
        changes.Went.Select(finding => finding.Rule).ShouldNotContain("space-taken-twice");
    }

    [Fact]
    public void Figures_are_there_before_and_after()
    {
        var changes = Versions.Between(Versions.Shed, Versions.With(("rating: 480 W", "rating: 600 W")));
        var grown = changes.After!.Connected.Total.Value - changes.Before!.Connected.Total.Value;
        grown.ShouldBe(120);
    }

    [Fact]
    public void A_version_that_is_no_schedule_is_said_to_be_none() =>
        Versions.Between(Versions.Shed, "a: [1\n").Facts.ShouldHaveSingleItem().Text
            .ShouldBe("the later version cannot be read as a schedule, so it cannot be compared");
}
