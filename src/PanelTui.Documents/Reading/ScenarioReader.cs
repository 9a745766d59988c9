using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>Reads an entry of `scenarios`; the circuits that it names must be there.</summary>
internal sealed class ScenarioReader(ImmutableArray<string> ids)
{
    public Scenario Read(MappingReader scenario)
    {
        var running = scenario.List(ScenarioFields.Running);
        var named = running.Where(one => !IsAll(one.Value)).ToImmutableArray();
        return new()
        {
            Name = scenario.Required(ScenarioFields.Name, ""),
            RunsAll = running.Length > named.Length || scenario.ValueOf(ScenarioFields.Running) is null,
            Running = Known(scenario, ScenarioFields.Running, named),
            Except = Known(scenario, ScenarioFields.Except, scenario.List(ScenarioFields.Except)),
            Starting = Starting(scenario),
        };
    }

    private static bool IsAll(string word) => word.Equals(IdForm.All, StringComparison.OrdinalIgnoreCase);

    private string? Starting(MappingReader scenario)
    {
        if (scenario.Object(ScenarioFields.Starting) is not { } id) return null;
        var node = scenario.ValueOf(ScenarioFields.Starting)!;
        return Known(scenario, ScenarioFields.Starting, [(id, node)]).FirstOrDefault();
    }

    private ImmutableArray<string> Known(
        MappingReader scenario, Field field, IEnumerable<(string Id, YamlNode Node)> named)
    {
        var known = ImmutableArray.CreateBuilder<string>();
        foreach (var (id, node) in named)
        {
            if (ids.Contains(id)) known.Add(id);
            else scenario.Diagnostics.Error(DiagnosticCodes.UnknownCircuit, node.Span, $"{field.Key} {Unknown(id)}");
        }

        return known.DrainToImmutable();
    }

    private string Unknown(string id) =>
        $"names {Quoted.Of(id)}, but no circuit has this id{DidYouMean.Hint(id, ids)}";
}
