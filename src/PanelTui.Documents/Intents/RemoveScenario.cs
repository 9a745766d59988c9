using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Removes a scenario.</summary>
public static class RemoveScenario
{
    public static Intended In(Snapshot snapshot, int index) => Attempt.Of(
        snapshot,
        $"Remove scenario {Called.Scenario(snapshot, index)}",
        tree => YamlEditor.RemoveItem(tree, Places.Scenarios, index));
}
