using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Tries edits on a copy: they count only where the file can be read afterwards as well as before.</summary>
internal static class Attempt
{
    /// <param name="before">The file as it is.</param>
    /// <param name="title">What undo will call it.</param>
    /// <param name="edits">Each made on the tree that the ones before it have left.</param>
    public static Intended Of(Snapshot before, string title, params ReadOnlySpan<Func<YamlTree, TextChange>> edits)
    {
        if (before.Tree is not { } tree) return Intended.Refused("the file cannot be read as YAML; mend that first");
        try
        {
            var change = Edits.InOrder(tree, title, edits);
            var after = change.IsEmpty ? before
                : change.Result is { } read ? Snapshot.Of(read)
                : Snapshot.Of(before.Source.WithText(change.ApplyTo(before.Source.Text)));
            return NewErrors.First(before, after) is { } error ? Intended.Refused(error) : new(change with { Result = null }, after, null);
        }
        catch (CannotEdit refusal)
        {
            return Intended.Refused(refusal.Message);
        }
        catch (YamlProblem problem)
        {
            return Intended.Refused(problem.Message);
        }
    }
}
