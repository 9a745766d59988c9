using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Hangs a load on a circuit below another one, with all that it says.</summary>
public static class CopyLoad
{
    public static Intended In(Snapshot snapshot, int circuit, int load) =>
        snapshot.Places.NodeAt(Places.Load(circuit, load)) is not { } node
            ? Intended.Refused("there is no such load")
            : Attempt.Of(
                snapshot,
                $"Copy {Called.Load(snapshot, circuit, load)}",
                tree => YamlEditor.InsertItem(tree, Places.Loads(circuit), load + 1, CopiedNode.Of(node)));
}
