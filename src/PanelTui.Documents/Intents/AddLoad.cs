using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Hangs a load on a circuit, after those that are there.</summary>
public static class AddLoad
{
    public static Intended In(Snapshot snapshot, int circuit, NewLoad load)
    {
        var (nodes, refusal) = LoadNodes.Of([load]);
        if (refusal is not null) return Intended.Refused(refusal);
        var list = Places.Loads(circuit);
        return Attempt.Of(
            snapshot,
            $"Add a load to {Called.Circuit(snapshot, circuit)}",
            tree => list.Find(tree) is { IsSequence: true } loads
                ? YamlEditor.InsertItem(tree, list, loads.Items.Length, LikeNeighbours(snapshot, nodes[0], loads))
                : NewKey.Of(tree, list, LoadNodes.List(snapshot, nodes)));
    }

    private static NewMapping LikeNeighbours(Snapshot snapshot, NewMapping load, YamlNode loads) =>
        loads.Items.IsEmpty ? LoadNodes.Styled(snapshot, load) : load;
}
