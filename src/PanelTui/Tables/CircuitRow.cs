using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.Tables;

/// <summary>A circuit as a row of the table: its lines in the file, and what follows from them.</summary>
/// <param name="File">The file that it stands in.</param>
/// <param name="VoltAmperes">What it connects, on all its legs.</param>
/// <param name="Watts">What it takes from the source while it runs.</param>
/// <param name="Findings">Those that are about one of its spaces.</param>
internal sealed record CircuitRow(Snapshot File, Circuit Circuit, decimal VoltAmperes, decimal Watts, ImmutableArray<Finding> Findings)
{
    /// <summary>All circuits in the order of the file.</summary>
    public static ImmutableArray<CircuitRow> AllOf(Snapshot file)
    {
        var assessment = file.Assessment!;
        var loads = assessment.Connected.Loads.ToLookup(load => load.Circuit.Ordinal);
        return
        [
            .. assessment.Schedule.Circuits.Select(circuit => new CircuitRow(
                file,
                circuit,
                loads[circuit.Ordinal].Sum(load => load.Size.Power.Value),
                loads[circuit.Ordinal].Sum(load => load.RunningWatts.Value),
                FindingsOn(assessment, circuit))),
        ];
    }

    /// <summary>What the file says at a key of the circuit, in its own words; empty where the key is not there.</summary>
    public string Written(string key) => FieldValue.At(File, Places.Circuit(Circuit.Ordinal).Then(key)) ?? "";

    private static ImmutableArray<Finding> FindingsOn(Assessment assessment, Circuit circuit)
    {
        var spaces = circuit.Spaces.ToList();
        return [.. assessment.Findings.Where(finding => finding.Spaces.Any(spaces.Contains))];
    }
}
