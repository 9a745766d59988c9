using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Edits of a file that touch nothing but what they say. Each returns the change without making it; each has been tried,
/// read back and found to mean exactly what was intended.
/// </summary>
/// <exception cref="CannotEdit">Every edit throws it when it cannot be made, with the reason as a sentence.</exception>
public static class YamlEditor
{
    /// <summary>Gives a single value another text; where the last key of the path is missing, adds the entry.</summary>
    /// <remarks>Quotes and comments stay where they can. A value that already means this is left as it is.</remarks>
    public static TextChange SetScalar(YamlTree tree, YamlPath path, NewScalar value) =>
        path.Find(tree) is null && !path.IsRoot && path.Last.Key is { } key
            ? InsertEntry(tree, path.Parent, key, value)
            : ScalarChange.Of(tree, path, value);

    /// <summary>Gives several single values another text at once, each of another mapping, and adds those that are missing after the key that is named, else first.</summary>
    /// <returns>Nothing where they cannot be changed at once; one after the other they may be.</returns>
    public static TextChange? SetScalars(YamlTree tree, IEnumerable<(YamlPath Path, NewScalar Value, string? After)> values)
    {
        var draft = Draft.Of(tree);
        return draft.CommitAll("change values", values.Select(value => value.Path.Find(draft.Tree) is null
            ? EntryInsertion.Plan(
                draft, value.Path.Parent, new(value.Path.Last.Key!, value.Value), pairs => value.After is null ? 0 : IndexAfter(value.After, pairs))
            : ScalarChange.Plan(draft, value.Path, value.Value)));
    }

    /// <summary>Adds an entry to a mapping, after the given key where the mapping has it, else at its end.</summary>
    public static TextChange InsertEntry(YamlTree tree, YamlPath mapping, string key, NewNode value, string? after = null) =>
        EntryInsertion.Of(tree, mapping, new(key, value), pairs => after is null ? pairs.Length : IndexAfter(after, pairs));

    /// <summary>Adds an entry to a mapping as its first, second, … (from 0).</summary>
    public static TextChange InsertEntryAt(YamlTree tree, YamlPath mapping, int index, string key, NewNode value) =>
        EntryInsertion.Of(tree, mapping, new(key, value), _ => index);

    /// <summary>Removes the entry at the path from its mapping. Comments above it stay.</summary>
    public static TextChange RemoveEntry(YamlTree tree, YamlPath path) => EntryRemoval.Of(tree, path);

    /// <summary>Adds an item to a list, so that it stands at the index.</summary>
    public static TextChange InsertItem(YamlTree tree, YamlPath list, int index, NewNode value) =>
        ItemInsertion.Of(tree, list, index, value);

    /// <summary>Removes an item with the comments that belong to it.</summary>
    public static TextChange RemoveItem(YamlTree tree, YamlPath list, int index) => ItemRemoval.Of(tree, list, index);

    /// <summary>Removes several items and entries at once, each from another list or mapping; a path that ends in an index is an item.</summary>
    /// <returns>Null where they cannot be removed at once; one after the other they may be.</returns>
    public static TextChange? RemoveAll(YamlTree tree, IEnumerable<YamlPath> paths)
    {
        var draft = Draft.Of(tree);
        return draft.CommitAll("remove", paths.Select(path => path.Last.Index is { } index
            ? ItemRemoval.Plan(draft, path.Parent, index)
            : EntryRemoval.Plan(draft, path)));
    }

    private static int IndexAfter(string key, System.Collections.Immutable.ImmutableArray<YamlPair> pairs)
    {
        for (var index = 0; index < pairs.Length; index++)
        {
            if (pairs[index].Key.IsScalar && pairs[index].Key.Value == key) return index + 1;
        }

        return pairs.Length;
    }
}
