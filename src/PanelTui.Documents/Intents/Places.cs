using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>The paths of circuits, loads, scenarios and accepted findings, all counted from 0 in the order of the file.</summary>
public static class Places
{
    public static YamlPath Circuits { get; } = YamlPath.Of(TopFields.Circuits.Key);

    public static YamlPath Scenarios { get; } = YamlPath.Of(TopFields.Scenarios.Key);

    public static YamlPath Accepted { get; } = YamlPath.Of(TopFields.Accepted.Key);

    public static YamlPath Circuit(int ordinal) => Circuits.Then(ordinal);

    public static YamlPath Loads(int circuit) => Circuit(circuit).Then(CircuitFields.Loads.Key);

    public static YamlPath Load(int circuit, int load) => Loads(circuit).Then(load);

    public static YamlPath Scenario(int index) => Scenarios.Then(index);

    public static YamlPath Acceptance(int index) => Accepted.Then(index);
}
