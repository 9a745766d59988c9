using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Lets two circuits change places: each gets the other's top space.</summary>
public static class SwapCircuits
{
    public static Intended In(Snapshot snapshot, int one, int other)
    {
        if (Space(snapshot, one) is not { } first || Space(snapshot, other) is not { } second)
            return Intended.Refused("a circuit without a space cannot change places");
        return Attempt.Of(
            snapshot,
            $"Swap {Called.Circuit(snapshot, one)} and {Called.Circuit(snapshot, other)}",
            tree => YamlEditor.SetScalar(tree, PathOf(one), new(second, ScalarKind.Plain)),
            tree => YamlEditor.SetScalar(tree, PathOf(other), new(first, ScalarKind.Plain)));
    }

    private static string? Space(Snapshot snapshot, int ordinal) => snapshot.Places.NodeAt(PathOf(ordinal))?.Value;

    private static YamlPath PathOf(int ordinal) => Places.Circuit(ordinal).Then(CircuitFields.Space.Key);
}
