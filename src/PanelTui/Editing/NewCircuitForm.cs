using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
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
        return new FormRefusal(FieldToBlame(session.Now, texts), reason);
    }

    public override void Preview(Session session, ImmutableArray<string> texts) =>
        session.Try(snapshot => Place(snapshot, texts));

    private TextChange Place(Snapshot snapshot, ImmutableArray<string> texts) => AddCircuit.In(
        snapshot,
        new NewCircuit(space, texts[Name].Trim(), texts[Rating].Trim(), PolesOf(texts), LoadPhrase.Parse(texts[Loads])));

    private static int PolesOf(ImmutableArray<string> texts) =>
        int.TryParse(texts[Poles].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= 3
            ? count
            : throw new CannotEdit($"poles is \"{texts[Poles].Trim()}\"; a breaker has 1, 2 or 3");

    /// <summary>The first field that is refused with the others as they were offered.</summary>
    private int FieldToBlame(Snapshot snapshot, ImmutableArray<string> texts)
    {
        foreach (var field in (int[])[Loads, Rating, Poles])
        {
            if (IsTaken(snapshot, texts.SetItem(field, Fields[field].Value))) return field;
        }

        return Name;
    }

    private bool IsTaken(Snapshot snapshot, ImmutableArray<string> texts)
    {
        try
        {
            Place(snapshot, texts);
            return true;
        }
        catch (CannotEdit)
        {
            return false;
        }
    }
}
