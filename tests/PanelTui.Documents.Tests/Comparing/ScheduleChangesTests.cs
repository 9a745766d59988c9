using PanelTui.Documents.Comparing;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Comparing;

public class ScheduleChangesTests
{
    private const string Before = """
        schedule: 1
        panel: {name: Shed, system: 120/240 V 1ph 3W, spaces: 12, bus: 100 A}
        feeder: {ocpd: 50 A}
        circuits:
          - id: lights
            space: 1
            name: Lights
            breaker: 15 A
            loads:
              - {kind: lighting, rating: 480 W}
          - {space: 2, name: Well pump, breaker: 20 A, poles: 2, loads: [{kind: motor, rating: 1 hp}]}
        scenarios:
          - {name: Night, running: [lights]}

        """;

    [Theory]
    [InlineData("breaker: 15 A", "breaker: 20 A", "Lights (space 1): breaker 20 A, was 15 A")]
    [InlineData("space: 1\n", "space: 5\n", "Lights (space 5): moved from space 1 to 5")]
    [InlineData("space: 1\n", "space: 7\n", "Lights (space 7): moved from space 1 to 7, from leg A to leg B")]
    [InlineData("bus: 100 A", "bus: 125 A", "panel: bus 125 A, was 100 A")]
    [InlineData("rating: 480 W", "rating: 500 W", "Lights (space 1): load lighting 480 W: rating 500 W, was 480 W")]
    [InlineData("feeder: {ocpd: 50 A}\n", "", "feeder: removed (ocpd 50 A)")]
    [InlineData("[lights]", "all", "scenario Night: running all, was lights")]
    [InlineData("poles: 2, ", "", "Well pump (space 2): poles no longer stated, was 2")]
    [InlineData("breaker: 15 A", "breaker: 0.015 kA", "only the spelling, order or layout changed, nothing about the panel")]
    [InlineData("breaker: 15 A", "breaker: 15 A # new", "only comments changed, nothing about the panel")]
    public void A_change_is_told_in_the_words_of_the_trade(string old, string now, string fact) =>
        Changes(Before.Replace(old, now, StringComparison.Ordinal)).Facts.ShouldHaveSingleItem().ToString().ShouldBe(fact);

    [Fact]
    public void A_circuit_that_is_gone_and_one_that_is_new_are_told_with_what_they_are()
    {
        var after = Before.Replace("{space: 2, name: Well pump", "{space: 6, name: Saw", StringComparison.Ordinal);
        Changes(after).Facts.Select(fact => fact.ToString()).ShouldBe(
        [
            "Well pump (space 2, 4): removed (20 A, 2 poles, motor 1 hp)",
            "Saw (space 6, 8): added, 20 A, 2 poles, motor 1 hp",
        ]);
    }

    [Fact]
    public void The_same_text_is_no_change() => Changes(Before).AreNone.ShouldBeTrue();

    [Fact]
    public void A_finding_comes_with_the_change_that_makes_it() =>
        Changes(Before.Replace("space: 1\n", "space: 4\n", StringComparison.Ordinal))
            .Came.ShouldContain(finding => finding.Rule == "space-taken-twice");

    private static ScheduleChanges Changes(string after) => ScheduleChanges.Between(Of(Before), Of(after));

    private static Snapshot Of(string text) => Snapshot.Of(SourceText.FromString(text));
}
