using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>The breaker under the cursor: what is changed is written, the rest of its lines stay.</summary>
internal sealed class EditCircuitForm(Snapshot snapshot, Circuit circuit) : CircuitForm
{
    public override ImmutableArray<FormField> Fields { get; } = FieldsOf(
        circuit.Name,
        WrittenOf(snapshot, circuit, "breaker"),
        circuit.Breaker.Poles.ToString(CultureInfo.InvariantCulture),
        LoadPhrase.Of(snapshot, circuit.Ordinal));

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts)
    {
        var (done, refusal) = Change(session.Now, texts);
        if (done is { Change.IsEmpty: false }) session.Do(_ => done);
        return refusal is { Field: Loads } ? LoadRefusal(Loads, texts[Loads]) ?? refusal : refusal;
    }

    public override void Preview(Session session, ImmutableArray<string> texts)
    {
        if (Change(session.Now, texts).Done is { Change.IsEmpty: false } done) session.Try(_ => done);
        else session.EndPreview();
    }

    private (Intended? Done, FormRefusal? Refusal) Change(Snapshot now, ImmutableArray<string> texts) =>
        Join(now, $"Change {CircuitText.NameOf(circuit)}", Steps(texts));

    private IEnumerable<(int Field, Func<Snapshot, Intended> Step)> Steps(ImmutableArray<string> texts)
    {
        foreach (var (field, key) in ((int, string)[])[(Name, "name"), (Rating, "breaker"), (Poles, "poles")])
        {
            var text = texts[field].Trim();
            if (text != Fields[field].Value) yield return (field, before => SetField.In(before, PathOf(key), text));
        }

        if (texts[Loads].Trim() != Fields[Loads].Value)
            yield return (Loads, before => SetLoads.In(before, circuit.Ordinal, LoadPhrase.Parse(TypedLoads.Of(texts[Loads]).Text)));
    }

    private YamlPath PathOf(string key) => Places.Circuit(circuit.Ordinal).Then(key);

    /// <summary>The rating as the file writes it.</summary>
    private static string WrittenOf(Snapshot snapshot, Circuit circuit, string key) =>
        snapshot.Places.NodeAt(Places.Circuit(circuit.Ordinal).Then(key))?.Value ?? $"{circuit.Breaker.Rating}";
}
