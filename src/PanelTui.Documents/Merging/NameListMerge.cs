using PanelTui.Documents.Comparing;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Merges a list of names in brackets: what either side added is there, what either took out is not.</summary>
internal static class NameListMerge
{
    /// <summary>Whether the key holds names, which have no order; the hours of a day have one.</summary>
    public static bool IsSet(string pattern) =>
        FieldBook.Find(pattern) is { Shape: FieldShape.List } field && field.Path != EnergyFields.Hourly.Path;

    /// <summary>What is to be done to our list, one edit after the other.</summary>
    public static IEnumerable<Func<YamlTree, TextChange>> Edits(YamlNode? was, YamlNode mine, YamlNode other, YamlPath list)
    {
        var (old, ours, theirs) = (Names(was), Names(mine), Names(other));
        foreach (var name in old.Where(name => ours.Contains(name) && !theirs.Contains(name)))
            yield return tree => YamlEditor.RemoveItem(tree, list, IndexOf(name, list.Find(tree)!));
        foreach (var item in other.Items.Select(item => item.Value))
        {
            var name = Likeness.Of(item);
            if (!old.Contains(name) && !ours.Contains(name))
                yield return tree => YamlEditor.InsertItem(tree, list, list.Find(tree)!.Items.Length, NodeCopy.Of(item));
        }
    }

    private static int IndexOf(string name, YamlNode list) =>
        Enumerable.Range(0, list.Items.Length).First(index => Likeness.Of(list.Items[index].Value) == name);

    private static HashSet<string> Names(YamlNode? list) =>
        list is null ? [] : [.. list.Items.Select(item => Likeness.Of(item.Value))];
}
