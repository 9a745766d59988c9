using PanelTui.Documents.Comparing;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Merges a list of names in brackets: what either side added is there, what either took out is not.</summary>
internal static class NameListMerge
{
    /// <exception cref="CannotEdit">The list cannot be changed without doubt.</exception>
    public static string Of(YamlNode? was, YamlNode mine, YamlNode other, string text)
    {
        var old = Names(was);
        var theirs = Names(other);
        for (var index = mine.Items.Length - 1; index >= 0; index--)
        {
            var name = Likeness.Of(mine.Items[index].Value);
            if (old.Contains(name) && !theirs.Contains(name)) text = FlowMerge.Edited(text, tree => YamlEditor.RemoveItem(tree, YamlPath.Root, index));
        }

        var ours = Names(mine);
        foreach (var item in other.Items.Select(item => item.Value))
        {
            if (old.Contains(Likeness.Of(item)) || ours.Contains(Likeness.Of(item))) continue;
            text = FlowMerge.Edited(text, tree => YamlEditor.InsertItem(tree, YamlPath.Root, tree.Root!.Items.Length, NodeCopy.Of(item)));
        }

        return text;
    }

    private static HashSet<string> Names(YamlNode? list) =>
        list is null ? [] : [.. list.Items.Select(item => Likeness.Of(item.Value))];
}
