using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Intents;

/// <summary>Adds a circuit that says what another one says, in another space and with an id of its own.</summary>
/// <remarks>What is true of the first one's wires alone is left out: a shared neutral, where it was moved from, when it was verified.</remarks>
public static class CopyCircuit
{
    /// <param name="snapshot">The file to add to.</param>
    /// <param name="source">The file as it was when the circuit was copied.</param>
    /// <param name="ordinal">Which circuit of <paramref name="source"/>.</param>
    /// <param name="to">The top space of the copy.</param>
    public static Intended In(Snapshot snapshot, Snapshot source, int ordinal, SpaceNumber to)
    {
        if (source.Places.NodeAt(Places.Circuit(ordinal)) is not { } circuit) return Intended.Refused("there is no such circuit");
        var name = source.Places.NodeAt(Places.Circuit(ordinal).Then(CircuitFields.Name.Key))?.Value ?? "";
        var id = FreshId.For(snapshot, name);
        ImmutableArray<NewEntry> head = id.Length == 0 ? [] : [new(CircuitFields.Id.Key, id)];
        var entries = CopiedNode.Without(
            circuit,
            CircuitFields.Id.Key,
            CircuitFields.Space.Key,
            CircuitFields.Multiwire.Key,
            CircuitFields.Tied.Key,
            CircuitFields.MovedFrom.Key,
            CircuitFields.NeutralMoved.Key,
            CircuitFields.Verified.Key);
        var space = new NewEntry(CircuitFields.Space.Key, new NewScalar($"{to}", ScalarKind.Plain));
        return Attempt.Of(
            snapshot,
            $"Copy {(name.Length == 0 ? "a circuit" : name)} to {to}",
            tree => NewItem.Of(tree, Places.Circuits, AddCircuit.IndexFor(tree, $"{to}"), new NewMapping([.. head, space, .. entries])));
    }
}
