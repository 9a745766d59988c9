using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Adds a scenario after those that are there; without `running` it runs every circuit on standby.</summary>
public static class AddScenario
{
    public static Intended In(Snapshot snapshot, string name)
    {
        if (ScenarioFields.Name.WhyNot(name) is { } reason) return Intended.Refused(reason);
        if (string.IsNullOrWhiteSpace(name)) return Intended.Refused("a scenario needs a name");
        var scenario = new NewMapping(
        [
            new(ScenarioFields.Name.Key, Typing.Scalar(ScenarioFields.Name, name)),
            new(ScenarioFields.Running.Key, Typing.Node(ScenarioFields.Running, "all")),
        ]);
        return Attempt.Of(
            snapshot,
            $"Add scenario {name.Trim()}",
            tree => NewItem.Of(tree, Places.Scenarios, Places.Scenarios.Find(tree)?.Items.Length ?? 0, scenario));
    }
}
