using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>A new breaker: name, rating, load, one after the other with Enter.</summary>
internal sealed class NewCircuitForm(SpaceNumber space, int poles) : CircuitForm
{
    /// <remarks>Common practice, no source: receptacle circuits, the most frequent, are on 20 A one-pole breakers.</remarks>
    private const string UsualRating = "20 A";

    public override ImmutableArray<FormField> Fields { get; } =
        FieldsOf("", UsualRating, poles.ToString(CultureInfo.InvariantCulture), "");

    public override bool StepByStep => true;

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts)
    {
        if (session.Do(snapshot => Place(snapshot, texts)) is not { } reason) return null;
        var field = FieldToBlame(session.Now, texts);
        return (field == Loads && session.WhyNoEdit is null ? LoadRefusal(field, texts[Loads]) : null) ?? new FormRefusal(field, reason);
    }

    public override void Preview(Session session, ImmutableArray<string> texts) =>
        session.Try(snapshot => Place(snapshot, texts));

    private Intended Place(Snapshot snapshot, ImmutableArray<string> texts)
    {
        var circuit = NewCircuit.Of(space, texts[Rating].Trim(), texts[Name].Trim(), LoadPhrase.Parse(TypedLoads.Of(texts[Loads]).Text));
        var count = texts[Poles].Trim();
        return AddCircuit.In(snapshot, count == "1" ? circuit : circuit.With("poles", count));
    }

    /// <summary>The first field that makes the form possible once it is as it was offered.</summary>
    private int FieldToBlame(Snapshot snapshot, ImmutableArray<string> texts)
    {
        int[] suspects = [Loads, Rating, Poles, Name];
        return suspects.FirstOrDefault(field => Place(snapshot, texts.SetItem(field, Fields[field].Value)).IsPossible, Name);
    }
}
