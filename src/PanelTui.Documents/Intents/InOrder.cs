using PanelTui.Documents.Text;

namespace PanelTui.Documents.Intents;

/// <summary>Several intents as one step of undo, each on the file that the ones before it leave; all of them or none.</summary>
public static class InOrder
{
    public static Intended Of(Snapshot snapshot, string title, params IEnumerable<Func<Snapshot, Intended>> steps)
    {
        var all = new Intended(new TextChange(title, []), snapshot, null);
        foreach (var step in steps)
        {
            var next = step(all.After!);
            if (!next.IsPossible) return next;
            all = all with { Change = all.Change!.Then(next.Change), After = next.After };
        }

        return all;
    }
}
