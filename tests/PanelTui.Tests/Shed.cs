using PanelTui.Documents;
using PanelTui.Documents.Text;

namespace PanelTui.Tests;

/// <summary>Schedules to try things on, in the user's own format.</summary>
internal static class Shed
{
    /// <summary>A small split-phase panel: two lights, a two-pole pump, a tandem pair, a spare.</summary>
    public const string Text = """
        # A small panel to try things on.
        schedule: 1
        panel:
          name: Test shed
          system: 120/240 V 1ph 3W
          spaces: 12
          bus: 100 A
          main: 50 A
          tandem_spaces: [11, 12]
          neutral_bonded: no
        demand: {method: selected}
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
          - {id: pump, space: 2, name: Well pump, breaker: 20 A, poles: 2, loads: [{kind: motor, rating: 1 hp, running: 1100 W}]}
          - {id: bench, space: 3, name: Bench receptacles, breaker: 20 A, loads: [{kind: receptacle, outlets: 4}]}
          - {id: fan, space: 11a, name: Fan, breaker: 15 A, loads: [{kind: other, rating: 60 W}]}
          - {id: lamp, space: 11b, name: Lamp, breaker: 15 A, loads: [{kind: lighting, rating: 40 W}]}
          - {space: 12, name: Spare, breaker: 20 A, spare: yes}
        scenarios:
          - {name: Night, running: all}

        """;

    public static Snapshot Snapshot(string text = Text) => Documents.Snapshot.Of(SourceText.FromString(text));

    /// <summary>An example schedule of the repository.</summary>
    public static string Example(string name) => Path.Combine(SourceTree.Root, "examples", $"{name}.panel.yaml");
}
