using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>How titles call the things of a file, also of a file that cannot be read as a schedule.</summary>
internal static class Called
{
    /// <summary>Its name, or its space, or its place in the list.</summary>
    public static string Circuit(Snapshot snapshot, int ordinal)
    {
        if (Text(snapshot, Places.Circuit(ordinal).Then(CircuitFields.Name.Key)) is { } name) return name;
        return Text(snapshot, Places.Circuit(ordinal).Then(CircuitFields.Space.Key)) is { } space
            ? $"the circuit at {space}"
            : $"circuit {ordinal + 1}";
    }

    /// <summary>`the motor of Cold room`.</summary>
    public static string Load(Snapshot snapshot, int circuit, int load)
    {
        var kind = Text(snapshot, Places.Load(circuit, load).Then(LoadFields.Kind.Key));
        return $"{(kind is null ? $"load {load + 1}" : $"the {kind}")} of {Circuit(snapshot, circuit)}";
    }

    /// <summary>
    /// What the value at a path belongs to: ` of Cold room`; empty for the panel and what has one of its kind.
    /// </summary>
    public static string Owner(Snapshot snapshot, YamlPath path) => path.Steps switch
    {
        [{ Key: "circuits" }, { Index: { } circuit }, { Key: "loads" }, { Index: { } load }, ..] =>
            $" of {Load(snapshot, circuit, load)}",
        [{ Key: "circuits" }, { Index: { } circuit }, ..] => $" of {Circuit(snapshot, circuit)}",
        [{ Key: "scenarios" }, { Index: { } scenario }, ..] => $" of {Scenario(snapshot, scenario)}",
        [{ Key: "accepted" }, { Index: { } index }, ..] => $" of accepted finding {index + 1}",
        [{ Key: { } section }, _, ..] => $" of the {section}",
        _ => "",
    };

    public static string Scenario(Snapshot snapshot, int index) =>
        Text(snapshot, Places.Scenario(index).Then(ScenarioFields.Name.Key)) ?? $"scenario {index + 1}";

    private static string? Text(Snapshot snapshot, YamlPath path) =>
        snapshot.Places.NodeAt(path) is { IsScalar: true, Value: { Length: > 0 } text } ? text : null;
}
