using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Editing;

/// <summary>Name, breaker, poles and loads of one circuit, each as it stands in the file.</summary>
internal abstract class CircuitForm : Form
{
    private protected const int Name = 0;
    private protected const int Rating = 1;
    private protected const int Poles = 2;
    private protected const int Loads = 3;

    private static readonly ImmutableArray<string> Keys = ["circuits[].name", "circuits[].breaker", "circuits[].poles"];

    private protected static ImmutableArray<FormField> FieldsOf(string name, string rating, string poles, string loads) =>
    [
        new("Name", name, 18, "what it feeds, in words for the door"),
        new("Breaker", rating, 6, "the rating on its handle") { Offers = Ratings },
        new("Poles", poles, 2, "1, 2 or 3") { EnterPasses = true },
        LoadField(loads),
    ];

    /// <summary>All loads of a circuit on one line.</summary>
    public static FormField LoadField(string loads) =>
        new("Load", loads, 0, "like motor 1/2 hp, or several: lighting 480 W, continuous; receptacle, outlets 4") { Offers = LoadOffers.Of };

    /// <summary>Why loads were not taken, in words for a person who knows no kinds; nothing where they can stand.</summary>
    public static FormRefusal? LoadRefusal(int field, string text) =>
        TypedLoads.Of(text) is { Refusal: { } reason, Instead: var instead } ? new FormRefusal(field, reason, instead) : null;

    /// <summary>Name, breaker and poles by themselves; of the loads the whole form tells.</summary>
    public override FormRefusal? WhyNot(int field, string text) =>
        field < Loads ? FieldEntry.WhyNot(field, FieldBook.Find(Keys[field])!, text) : null;

    private static ImmutableArray<string> Ratings(string typed) =>
        [.. FieldOffers.Matching(FieldBook.Find("circuits[].breaker")!.Offered, typed)];

    /// <summary>Runs steps one after the other on the file that each leaves; the first that is refused names its field.</summary>
    private protected static (Intended? Done, FormRefusal? Refusal) Join(
        Snapshot start, string title, IEnumerable<(int Field, Func<Snapshot, Intended> Step)> steps)
    {
        var done = InOrder.Of(start, title);
        foreach (var (field, step) in steps)
        {
            var before = done;
            done = InOrder.Of(start, title, _ => before, step);
            if (!done.IsPossible) return (null, new FormRefusal(field, done.Refusal));
        }

        return (done, null);
    }
}
