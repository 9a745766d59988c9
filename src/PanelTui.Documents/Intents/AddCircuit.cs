using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Intents;

/// <summary>
/// Adds a circuit where the order of spaces in the file has it, else at the end, written like its neighbours.
/// </summary>
public static class AddCircuit
{
    public static Intended In(Snapshot snapshot, NewCircuit circuit)
    {
        var named = circuit.TextOf(CircuitFields.Id.Key).Length > 0
            ? circuit
            : circuit.With(CircuitFields.Id.Key, FreshId.For(snapshot, circuit.TextOf(CircuitFields.Name.Key)));
        var (entries, refusal) = Typing.Entries(CircuitFields.Space.Owner, named.Values);
        var (loads, loadRefusal) = LoadNodes.Of(circuit.Loads);
        if ((refusal ?? loadRefusal) is { } reason) return Intended.Refused(reason);
        if (!loads.IsEmpty) entries = entries.Add(new(CircuitFields.Loads.Key, LoadNodes.List(snapshot, loads)));
        var space = circuit.TextOf(CircuitFields.Space.Key);
        var title = circuit.TextOf(CircuitFields.Name.Key) is { Length: > 0 } name
            ? $"Add {name} at {space}"
            : $"Add a circuit at {space}";
        return Attempt.Of(
            snapshot, title, tree => NewItem.Of(tree, Places.Circuits, IndexFor(tree, space), new NewMapping(entries)));
    }

    /// <summary>Before the first circuit of a higher space, if the file lists spaces in order.</summary>
    internal static int IndexFor(YamlTree tree, string space)
    {
        if (Places.Circuits.Find(tree) is not { IsSequence: true } list) return 0;
        ImmutableArray<SpaceNumber?> spaces = [.. list.Items.Select(item => SpaceOf(item.Value))];
        var isOrdered = spaces.Zip(spaces.Skip(1)).All(pair => pair is ({ } above, { } below) && above <= below);
        var above = spaces.TakeWhile(other => SpaceNumber.TryParse(space, out var wanted) && other <= wanted).Count();
        return isOrdered ? above : spaces.Length;
    }

    private static SpaceNumber? SpaceOf(YamlNode circuit) =>
        Aliases.Resolve(circuit).ValueOf(CircuitFields.Space.Key) is { IsScalar: true } node
        && SpaceNumber.TryParse(node.Value, out var space)
            ? space
            : null;
}
