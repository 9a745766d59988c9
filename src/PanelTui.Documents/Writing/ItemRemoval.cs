using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Removes an item from a list with the comments that belong to it and, where it was spaced, one run of blank lines.
/// </summary>
internal static class ItemRemoval
{
    public static TextChange Of(YamlTree tree, YamlPath path, int index)
    {
        var draft = Draft.Of(tree);
        var list = ListAt(draft, path, index);
        return draft.Commit("remove from the list", Edits(draft, list, index), draft.With(path, old => old.WithoutItem(index)));
    }

    /// <summary>The same as one of several edits that are made at once.</summary>
    /// <exception cref="CannotEdit">It cannot be made.</exception>
    public static PlannedEdit Plan(Draft draft, YamlPath path, int index) =>
        new(path, old => old.WithoutItem(index), [.. Edits(draft, ListAt(draft, path, index), index)]);

    /// <summary>The list at the path.</summary>
    /// <exception cref="CannotEdit">It is not a list, or has no item at one of the indices.</exception>
    public static YamlNode ListAt(Draft draft, YamlPath path, params ReadOnlySpan<int> indices)
    {
        var list = draft.NodeAt(path);
        if (!list.IsSequence) throw new CannotEdit($"{path} is not a list");
        foreach (var index in indices)
        {
            if (index < 0 || index >= list.Items.Length)
                throw new CannotEdit($"there is no {path.Then(index)} in the file");
        }

        return list;
    }

    /// <exception cref="CannotEdit">Something else stands before the item's dash on its line.</exception>
    public static void RefuseSharedLine(SourceText source, YamlNode list, int index)
    {
        if (!source.StartsItsLine(list.Items[index].Start))
            throw new CannotEdit("the item shares its line with the list around it; put it on a line of its own first");
    }

    private static IEnumerable<TextEdit> Edits(Draft draft, YamlNode list, int index)
    {
        var source = draft.Source;
        if (list.Style == YamlStyle.Flow) return FlowRemoval.Of(new(draft.Tree, list), index);
        if (list.Items.Length > 1) RefuseSharedLine(source, list, index);
        var regions = ItemRegions.Of(source, list);
        if (list.Items.Length == 1) return OnlyOne.Remove(source, list, regions[0], "[]");
        var lines = regions[index];
        var own = TextEdit.Remove(source.WholeLines(lines.First, lines.Last));
        return BlankLines.RunOf(source, regions, index) is { } run
            ? [own, TextEdit.Remove(source.WholeLines(run.First, run.Last))]
            : [own];
    }
}
