using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Removes a circuit, and its id from the scenarios that name it.</summary>
public static class RemoveCircuit
{
    public static Intended In(Snapshot snapshot, int ordinal)
    {
        List<Func<YamlTree, TextChange>> edits = [tree => YamlEditor.RemoveItem(tree, Places.Circuits, ordinal)];
        if (snapshot.Places.NodeAt(Places.Circuit(ordinal).Then(CircuitFields.Id.Key)) is { IsScalar: true } id)
            edits.AddRange(ScenarioMentions.Removing(snapshot, id.Value));
        return Attempt.Of(snapshot, $"Remove {Called.Circuit(snapshot, ordinal)}", [.. edits]);
    }
}
