using System.Globalization;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Adds a scenario below another one, with all that it says and a name of its own: `Night 2`.</summary>
public static class CopyScenario
{
    public static Intended In(Snapshot snapshot, int index)
    {
        if (snapshot.Places.NodeAt(Places.Scenario(index)) is not { } scenario) return Intended.Refused("there is no such scenario");
        var name = FreshName(snapshot, Called.Scenario(snapshot, index));
        var entries = CopiedNode.Without(scenario, ScenarioFields.Name.Key);
        return Attempt.Of(
            snapshot,
            $"Copy scenario {Called.Scenario(snapshot, index)} as {name}",
            tree => YamlEditor.InsertItem(
                tree, Places.Scenarios, index + 1,
                new NewMapping([new(ScenarioFields.Name.Key, Typing.Scalar(ScenarioFields.Name, name)), .. entries], CopiedNode.StyleOf(scenario))));
    }

    private static string FreshName(Snapshot snapshot, string name)
    {
        var count = snapshot.Places.NodeAt(Places.Scenarios)?.Items.Length ?? 0;
        var taken = Enumerable.Range(0, count).Select(at => Called.Scenario(snapshot, at)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return Enumerable.Range(2, count + 1)
            .Select(number => string.Create(CultureInfo.InvariantCulture, $"{name} {number}"))
            .First(fresh => !taken.Contains(fresh));
    }
}
