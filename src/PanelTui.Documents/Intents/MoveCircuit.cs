using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Intents;

/// <summary>Moves a circuit to another space; its place in the file stays, and nothing but `space` changes.</summary>
public static class MoveCircuit
{
    public static Intended In(Snapshot snapshot, int ordinal, SpaceNumber to)
    {
        var space = Places.Circuit(ordinal).Then(CircuitFields.Space.Key);
        var from = snapshot.Places.NodeAt(space)?.Value ?? "?";
        return Attempt.Of(
            snapshot,
            $"Move {Called.Circuit(snapshot, ordinal)} from {from} to {to}",
            tree => YamlEditor.SetScalar(tree, space, new($"{to}", ScalarKind.Plain)));
    }
}
