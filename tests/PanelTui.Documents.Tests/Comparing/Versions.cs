using PanelTui.Documents.Comparing;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Comparing;

/// <summary>Versions of one small schedule, each told by what it has in place of what.</summary>
internal static class Versions
{
    public const string Shed = """
        # A small panel to try things on.
        schedule: 1
        panel:
          name: Test shed
          system: 120/240 V 1ph 3W
          spaces: 12
          bus: 100 A
          main: 50 A
        feeder: {ocpd: 50 A}
        transfer: {kind: manual, rating: 50 A}
        source: {kind: inverters, arrangement: split, continuous_per_leg: 5 kW, ocpd: 50 A}
        circuits:
          - id: lights
            space: 1
            name: Shed lights        # the old fittings
            breaker: 15 A
            loads:
              - {kind: lighting, rating: 480 W}

          # Down at the spring.
          - id: pump
            space: 2
            name: Well pump
            breaker: 20 A
            poles: 2
            loads:
              - {kind: motor, rating: 1 hp}
          - id: bench
            space: 3
            name: Bench receptacles
            breaker: 20 A
            loads: [{kind: receptacle, outlets: 4}]
        scenarios:
          - {name: Night, running: [lights, pump]}

        """;

    public static SourceText Source(string text = Shed) => SourceText.FromString(text);

    /// <summary>The shed with each first text replaced by the second; every first one is there.</summary>
    public static string With(params (string Old, string New)[] changes) =>
        changes.Aggregate(Shed, (text, change) => text.Contains(change.Old, StringComparison.Ordinal)
            ? text.Replace(change.Old, change.New, StringComparison.Ordinal)
            : throw new ArgumentException($"not there: {change.Old}", nameof(changes)));

    public static ScheduleChanges Between(string before, string after) =>
        ScheduleChanges.Between(Snapshot.Of(Source(before)), Snapshot.Of(Source(after)));

    /// <summary>The facts that tell the shed from a version of it.</summary>
    public static string[] Facts(params (string Old, string New)[] changes) =>
        [.. Between(Shed, With(changes)).Facts.Select(fact => $"{fact}")];
}
