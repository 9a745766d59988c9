using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Text;

namespace PanelTui.Editing;

/// <summary>Name, breaker, poles and loads of one circuit, each as it stands in the file.</summary>
internal abstract class CircuitForm : Form
{
    private protected const int Name = 0;
    private protected const int Rating = 1;
    private protected const int Poles = 2;
    private protected const int Loads = 3;

    private protected static ImmutableArray<FormField> FieldsOf(string name, string rating, string poles, string loads) =>
    [
        new("Name", name, 18, "what it feeds, in words for the door"),
        new("Breaker", rating, 6, "its handle rating with the unit: 15 A, 20 A, 30 A"),
        new("Poles", poles, 2, "1, 2 or 3") { EnterPasses = true },
        new("Load", loads, 0, "KIND RATING, KEY VALUE: lighting 480 W, continuous · receptacle, outlets 4 · motor 2 hp"),
    ];

    /// <summary>Runs steps one after the other on the text that each leaves; the first that is refused names its field.</summary>
    private protected static (TextChange? Change, FormRefusal? Refusal) Join(
        Snapshot start, string title, IEnumerable<(int Field, Func<Snapshot, TextChange> Step)> steps)
    {
        var change = new TextChange(title, []);
        var now = start;
        foreach (var (field, step) in steps)
        {
            try
            {
                var next = step(now);
                change = change.Then(next);
                now = Snapshot.Of(now.Source.WithText(next.ApplyTo(now.Source.Text)));
            }
            catch (Documents.Writing.CannotEdit refusal)
            {
                return (null, new FormRefusal(field, refusal.Message));
            }
        }

        return (change, null);
    }
}
