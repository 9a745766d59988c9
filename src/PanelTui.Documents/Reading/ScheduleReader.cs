using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>
/// Reads a text as a schedule. It never throws on what a user wrote: a diagnostic says what is wrong.
/// </summary>
public static class ScheduleReader
{
    public static ScheduleReading Read(SourceText source)
    {
        try
        {
            var tree = YamlTree.Parse(source);
            return Read(tree);
        }
        catch (YamlProblem problem)
        {
            return new(null, null, [Unreadable(problem)], SourceMap.Empty);
        }
    }

    internal static ScheduleReading Read(YamlTree tree)
    {
        var diagnostics = new DiagnosticList();
        var schedule = TopMapping.Of(tree, diagnostics) is { } top && FormatVersion.IsReadable(top)
            ? Schedule(top, tree)
            : null;
        var read = diagnostics.HasErrors ? null : schedule;
        return new(tree, read, diagnostics.InOrder(), new SourceMap(tree, read));
    }

    private static Schedule Schedule(MappingReader top, YamlTree tree)
    {
        var panel = top.RequiredSection(TopFields.Panel, "panel") is { } found ? PanelReader.Read(found) : null;
        var circuits = Circuits(top, tree);
        return new()
        {
            Panel = panel ?? new() { System = PanelSystem.SplitPhase, Spaces = SpaceNumber.Most },
            Code = top.Section(TopFields.Code, "code") is { } code ? CodeReader.Read(code) : CodeBasis.Default,
            Demand = top.Section(TopFields.Demand, "demand") is { } demand
                ? DemandReader.Read(demand)
                : DemandBasis.Default,
            Feeder = top.Section(TopFields.Feeder, "feeder") is { } feeder ? FeederReader.Read(feeder) : null,
            Transfer = top.Section(TopFields.Transfer, "transfer") is { } transfer
                ? TransferReader.Read(transfer)
                : null,
            Source = top.Section(TopFields.Source, "source") is { } supply ? SourceReader.Read(supply) : null,
            Circuits = circuits,
            Scenarios = Scenarios(top, tree, circuits),
            Accepted =
            [
                .. top.Sections(TopFields.Accepted, "this acceptance", Limits.Accepted)
                    .Select(one => AcceptedReader.Read(one.Entry, one.Index)),
            ],
        };
    }

    private static ImmutableArray<Circuit> Circuits(MappingReader top, YamlTree tree)
    {
        var names = new UniqueNames(CircuitFields.Id, "circuits", tree, top.Diagnostics);
        var circuits = ImmutableArray.CreateBuilder<Circuit>();
        foreach (var (ordinal, entry) in top.Sections(TopFields.Circuits, "this circuit", Limits.Circuits))
        {
            circuits.Add(CircuitReader.Read(entry, ordinal));
            names.Add(entry);
        }

        return circuits.DrainToImmutable();
    }

    private static ImmutableArray<Scenario> Scenarios(
        MappingReader top, YamlTree tree, ImmutableArray<Circuit> circuits)
    {
        var names = new UniqueNames(ScenarioFields.Name, "scenarios", tree, top.Diagnostics);
        var reader = new ScenarioReader([.. circuits.Select(circuit => circuit.Id).OfType<string>()]);
        var scenarios = ImmutableArray.CreateBuilder<Scenario>();
        foreach (var (_, entry) in top.Sections(TopFields.Scenarios, "this scenario", Limits.Scenarios))
        {
            scenarios.Add(reader.Read(entry));
            names.Add(entry);
        }

        return scenarios.DrainToImmutable();
    }

    /// <summary>The one diagnostic of a file that is no text or no YAML at all.</summary>
    public static Diagnostic Unreadable(YamlProblem problem) =>
        new(DiagnosticSeverity.Error, DiagnosticCodes.NotYaml, new(problem.Offset, 0), problem.Message);
}
