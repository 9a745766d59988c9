using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Takes a circuit's id out of every scenario.</summary>
internal static class ScenarioMentions
{
    public static IEnumerable<Func<YamlTree, TextChange>> Removing(Snapshot snapshot, string id)
    {
        var count = snapshot.Places.NodeAt(Places.Scenarios)?.Items.Length ?? 0;
        return
            from scenario in Enumerable.Range(0, count)
            from field in new Field[] { ScenarioFields.Running, ScenarioFields.Except, ScenarioFields.Starting }
            from edit in Removing(snapshot, Places.Scenario(scenario).Then(field.Key), field, id)
            select edit;
    }

    /// <summary>What goes with a circuit, to be removed at once; null where a scenario would have to be written in another way.</summary>
    public static IReadOnlyList<YamlPath>? Paths(Snapshot snapshot, string id)
    {
        var paths = new List<YamlPath>();
        var count = snapshot.Places.NodeAt(Places.Scenarios)?.Items.Length ?? 0;
        for (var scenario = 0; scenario < count; scenario++)
        {
            foreach (var field in new Field[] { ScenarioFields.Running, ScenarioFields.Except, ScenarioFields.Starting })
            {
                var path = Places.Scenario(scenario).Then(field.Key);
                var node = path.Find(snapshot.Tree!);
                if (node is { IsScalar: true } && node.Value == id)
                {
                    if (field == ScenarioFields.Running) return null;
                    paths.Add(path);
                }

                paths.AddRange(Enumerable.Range(0, node?.Items.Length ?? 0)
                    .Where(index => Aliases.Resolve(node!.Items[index].Value).Value == id).Select(index => path.Then(index)));
            }
        }

        return paths;
    }

    private static IEnumerable<Func<YamlTree, TextChange>> Removing(
        Snapshot snapshot, YamlPath path, Field field, string id)
    {
        var node = path.Find(snapshot.Tree!);
        if (node is { IsScalar: true } && node.Value == id) return [Alone(path, field)];
        return
            from index in Enumerable.Range(0, node?.Items.Length ?? 0).Reverse()
            where Aliases.Resolve(node!.Items[index].Value).Value == id
            select (Func<YamlTree, TextChange>)(tree => YamlEditor.RemoveItem(tree, path, index));
    }

    /// <summary>A scenario that ran this circuit alone runs nothing now; without `running` it would run all.</summary>
    private static Func<YamlTree, TextChange> Alone(YamlPath path, Field field) => field == ScenarioFields.Running
        ? tree => Replace.Of(tree, path, new NewSequence([], CollectionStyle.Flow))
        : tree => YamlEditor.RemoveEntry(tree, path);
}
