using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Takes a load off a circuit; with the last one goes the list.</summary>
public static class RemoveLoad
{
    public static Intended In(Snapshot snapshot, int circuit, int load) => Attempt.Of(
        snapshot,
        $"Remove {Called.Load(snapshot, circuit, load)}",
        tree => Places.Loads(circuit).Find(tree) is { Items.Length: 1 } && load == 0
            ? YamlEditor.RemoveEntry(tree, Places.Loads(circuit))
            : YamlEditor.RemoveItem(tree, Places.Loads(circuit), load));
}
