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
        var title = $"Remove {Called.Circuit(snapshot, ordinal)}";
        var id = snapshot.Places.NodeAt(Places.Circuit(ordinal).Then(CircuitFields.Id.Key)) is { IsScalar: true } written ? written.Value : null;
        if (id is not null && ScenarioMentions.Paths(snapshot, id) is { } mentions)
        {
            var done = Attempt.Of(snapshot, title, tree => YamlEditor.RemoveAll(tree, [Places.Circuit(ordinal), .. mentions]) ?? throw new CannotEdit("not at once"));
            if (done.IsPossible) return done;
        }

        List<Func<YamlTree, TextChange>> edits = [tree => YamlEditor.RemoveItem(tree, Places.Circuits, ordinal)];
        if (id is not null) edits.AddRange(ScenarioMentions.Removing(snapshot, id));
        return Attempt.Of(snapshot, title, [.. edits]);
    }
}
