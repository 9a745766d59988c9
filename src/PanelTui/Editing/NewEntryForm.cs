using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Editing;

/// <summary>A new entry of a list, by the few keys that it cannot do without or is not often without.</summary>
/// <param name="session">The open file.</param>
/// <param name="list">The list.</param>
/// <param name="keys">What is asked for.</param>
/// <param name="add">Adds the entry that the texts make.</param>
internal sealed class NewEntryForm(
    Session session, YamlPath list, ImmutableArray<(string Key, int Columns)> keys, Func<Snapshot, ImmutableArray<string>, Intended> add) : Form
{
    /// <summary>Beyond the last entry, so that no value of one that is there is offered.</summary>
    private readonly YamlPath _entry = list.Then(int.MaxValue);

    public override ImmutableArray<FormField> Fields { get; } =
        [.. keys.Select(key => FieldEntry.Of(session, list.Then(int.MaxValue).Then(key.Key), key.Columns))];

    public override bool StepByStep => true;

    public static NewEntryForm Load(Session session, int circuit) => new(
        session, Places.Loads(circuit), [("kind", 15), ("rating", 0)],
        (snapshot, texts) => AddLoad.In(snapshot, circuit, NewLoad.Of(texts[0], texts[1])));

    public static NewEntryForm Scenario(Session session) => new(
        session, Places.Scenarios, [("name", 0)], (snapshot, texts) => AddScenario.In(snapshot, texts[0]));

    public static NewEntryForm Acceptance(Session session) => new(
        session, Places.Accepted, [("rule", 26), ("space", 4), ("because", 0)],
        (snapshot, texts) => AddAcceptance.In(snapshot, texts[0], texts[1], texts[2]));

    public override FormRefusal? WhyNot(int field, string text) => FieldEntry.WhyNot(field, FieldOf(keys[field].Key), text);

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts)
    {
        if (session.Do(snapshot => add(snapshot, texts)) is not { } reason) return null;
        return Enumerable.Range(0, keys.Length).Select(at => WhyNot(at, texts[at])).FirstOrDefault(refusal => refusal is not null)
            ?? new FormRefusal(keys.Length - 1, reason);
    }

    public override void Preview(Session session, ImmutableArray<string> texts) => session.Try(snapshot => add(snapshot, texts));

    private Field FieldOf(string key) => FieldBook.At(_entry.Then(key))!;
}
