using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Yaml;
using PanelTui.Editing;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>The lists of the format: loads of a circuit, circuits, scenarios, accepted findings.</summary>
internal static class EntriesPages
{
    public static void Open(IEditor editor, YamlPath list) => editor.Open(
        list.Equals(Places.Circuits) ? new TablePage(editor.Session, editor.Session.Here?.Ordinal) : new EntriesPage(Of(list)));

    public static string CircuitTitle(Session session, YamlPath circuit) =>
        $"Space {FieldValue.At(session.Now, circuit.Then("space"))}: {FieldValue.At(session.Now, circuit.Then("name")) ?? "(no name)"}";

    private static EntryList Of(YamlPath list) => list.Steps switch
    {
        [_, { Index: { } circuit }, ..] => Loads(circuit),
        [{ Key: "scenarios" }] => Scenarios,
        _ => Accepted,
    };

    private static EntryList Scenarios { get; } = new(
        Places.Scenarios,
        _ => "Scenarios: what runs together on the standby source",
        [("name", 20)],
        (session, entry) => $"Scenario {FieldValue.At(session.Now, entry.Then("name"))}",
        NewEntryForm.Scenario,
        AddScenario.In,
        RemoveScenario.In,
        CopyScenario.In);

    private static EntryList Accepted { get; } = new(
        Places.Accepted,
        _ => "Findings that are let stand for a reason",
        [("rule", 24), ("space", 5)],
        (session, entry) => $"Accepted: {FieldValue.At(session.Now, entry.Then("rule"))}",
        NewEntryForm.Acceptance,
        (snapshot, values) => AddAcceptance.In(snapshot, Of(values, "rule"), Of(values, "space"), Of(values, "because")),
        RemoveAcceptance.In);

    private static EntryList Loads(int circuit) => new(
        Places.Loads(circuit),
        session => $"Loads of {CircuitTitle(session, Places.Circuit(circuit))}",
        [("kind", 14), ("rating", 9)],
        (session, entry) => $"Load {FieldValue.At(session.Now, entry.Then("kind"))} of {CircuitTitle(session, Places.Circuit(circuit))}",
        session => NewEntryForm.Load(session, circuit),
        (snapshot, values) => AddLoad.In(snapshot, circuit, new NewLoad(values)),
        (snapshot, index) => RemoveLoad.In(snapshot, circuit, index),
        (snapshot, index) => CopyLoad.In(snapshot, circuit, index));

    private static string Of(ImmutableArray<TypedValue> values, string key) => values.FirstOrDefault(value => value.Key == key).Text ?? "";
}
