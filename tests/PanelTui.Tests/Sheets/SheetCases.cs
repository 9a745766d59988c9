using System.Collections.Concurrent;
using PanelTui.Documents;
using PanelTui.Documents.Text;
using PanelTui.Engine;

namespace PanelTui.Tests.Sheets;

/// <summary>Schedules that the tests of the sheets share.</summary>
internal static class SheetCases
{
    /// <summary>A name that tries to be markup, a formula, a printer's command, a path and a link at once.</summary>
    public const string Hostile = "=cmd|'/c calc'!A1 <script>alert(1)</script> ]]> &#0; \\u001b%-12345X@PJL | `x` [a](javascript:b) ../../x";

    private static readonly ConcurrentDictionary<string, Assessment> Assessed = new();

    public static IEnumerable<string> Examples =>
        Directory.EnumerateFiles(Path.Combine(SourceTree.Root, "examples"), "*.panel.yaml")
            .Order(StringComparer.Ordinal);

    /// <summary>The examples without their folder and ending.</summary>
    public static IReadOnlyList<string> ExampleNames =>
        Examples.Select(path => Path.GetFileName(path).Replace(".panel.yaml", "", StringComparison.Ordinal))
            .AtLeastOne();

    public static Assessment Example(string name) =>
        Assessed.GetOrAdd(name, _ => Read(File.ReadAllText(Shed.Example(name))));

    /// <summary>The sheets that name circuits.</summary>
    public static readonly string[] NamesCircuits = ["directory", "labels", "diagram", "loads"];

    /// <summary>The names of an example's circuits. One without a load has no line in a load calculation.</summary>
    public static IEnumerable<string> CircuitsOn(string kind, string example) => Example(example).Schedule.Circuits
        .Where(circuit => kind != "loads" || !circuit.Loads.IsEmpty)
        .Select(circuit => circuit.Name.ShouldNotBeNull());

    public static Assessment Read(string text) => Snapshot.Of(SourceText.FromString(text)).Assessment.ShouldNotBeNull();

    public static Assessment Named(string name) => Read(TextNamed(name));

    /// <summary>Two circuits, a scenario and a panel, all of one name.</summary>
    public static string TextNamed(string name) => $$"""
        schedule: 1
        panel: {name: "{{name}}", location: "{{name}}", fed_from: "{{name}}", revision: "{{name}}", system: 120/240 V 1ph 3W, spaces: 8}
        source: {kind: generator, location: "{{name}}", continuous: 7 kW, outlet: L14-30, ocpd: 30 A, neutral: floating}
        transfer: {kind: manual, rating: 30 A, switches_neutral: no}
        circuits:
          - {id: one, space: 1, name: "{{name}}", breaker: 20 A, wire: 12 AWG Cu, length: 40 ft, loads: [{kind: lighting, rating: 480 W}]}
          - {space: 2, name: "{{name}}", breaker: 30 A, poles: 2, loads: [{kind: water-heater, rating: 4.5 kW}]}
        scenarios:
          - {name: "{{name}}", running: [one]}
        """;
}
