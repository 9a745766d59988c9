using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Adds a scenario after those that are there; without `running` it runs every circuit on standby.</summary>
public static class AddScenario
{
    public static Intended In(Snapshot snapshot, string name) => In(snapshot, [new(ScenarioFields.Name.Key, name)]);

    /// <param name="snapshot">The file.</param>
    /// <param name="values">By the keys of `scenarios[]`; those without text are left out.</param>
    public static Intended In(Snapshot snapshot, ImmutableArray<TypedValue> values)
    {
        var name = TextOf(values, ScenarioFields.Name);
        if (name.Length == 0) return Intended.Refused("a scenario needs a name");
        if (TextOf(values, ScenarioFields.Running).Length == 0)
            values = values.RemoveAll(value => value.Key == ScenarioFields.Running.Key).Add(new(ScenarioFields.Running.Key, "all"));
        var (entries, refusal) = Typing.Entries(ScenarioFields.Name.Owner, values);
        return refusal is not null
            ? Intended.Refused(refusal)
            : Attempt.Of(
                snapshot,
                $"Add scenario {name}",
                tree => NewItem.Of(tree, Places.Scenarios, Places.Scenarios.Find(tree)?.Items.Length ?? 0, new NewMapping(entries)));
    }

    private static string TextOf(ImmutableArray<TypedValue> values, Field field) =>
        values.FirstOrDefault(value => value.Key == field.Key).Text?.Trim() ?? "";
}
