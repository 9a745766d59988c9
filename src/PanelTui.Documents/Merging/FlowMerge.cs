using PanelTui.Documents.Comparing;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Merges a mapping in braces key by key, as edits of our text.</summary>
internal sealed class FlowMerge(MergePlace place)
{
    private readonly List<Func<YamlTree, TextChange>> _settled = [];
    private readonly List<Func<YamlTree, TextChange>> _disputed = [];

    /// <exception cref="CannotEdit">Our text cannot be changed without doubt.</exception>
    public (string Ours, string Theirs) Merge(YamlNode? was, YamlNode mine, YamlNode other, string text)
    {
        Compare(was, mine, other, YamlPath.Root);
        var ours = _settled.Aggregate(text, Edited);
        return (ours, _disputed.Aggregate(ours, Edited));
    }

    public static string Edited(string text, Func<YamlTree, TextChange> edit) =>
        edit(YamlTree.Parse(SourceText.FromString(text))).ApplyTo(text);

    private void Compare(YamlNode? was, YamlNode mine, YamlNode other, YamlPath path)
    {
        string[] keys = [.. other.Pairs.Concat(mine.Pairs).Select(pair => pair.Key.Value).Distinct()];
        foreach (var key in keys)
        {
            var (old, ours, theirs) = (was?.ValueOf(key), mine.ValueOf(key), other.ValueOf(key));
            if (Likeness.Same(ours, theirs) || Likeness.Same(theirs, old)) continue;
            if (ours is { IsMapping: true } && theirs is { IsMapping: true } && old is null or { IsMapping: true })
                Compare(old, ours, theirs, path.Then(key));
            else if (ours is { IsSequence: true } && theirs is { IsSequence: true } && old is null or { IsSequence: true } && IsSet(path.Then(key)))
                _settled.AddRange(NameListMerge.Edits(old, ours, theirs, path.Then(key)));
            else
                (Likeness.Same(ours, old) && !place.IsHeld(key) ? _settled : _disputed).Add(tree => Take(tree, path, key, theirs, other));
        }
    }

    private bool IsSet(YamlPath list) => NameListMerge.IsSet($"{place.Pattern}.{FieldBook.PatternOf(list)}");

    private static TextChange Take(YamlTree tree, YamlPath map, string key, YamlNode? theirs, YamlNode other)
    {
        var path = map.Then(key);
        if (theirs is null) return YamlEditor.RemoveEntry(tree, path);
        if (theirs.IsScalar && path.Find(tree) is { IsScalar: true })
            return YamlEditor.SetScalar(tree, path, (NewScalar)NodeCopy.Of(theirs));
        var at = other.Pairs.IndexOf(other.PairOf(key)!);
        var after = at > 0 ? other.Pairs[at - 1].Key.Value : null;
        return path.Find(tree) is null
            ? YamlEditor.InsertEntry(tree, map, key, NodeCopy.Of(theirs), after)
            : Edits.InOrder(
                tree, "take theirs",
                before => YamlEditor.RemoveEntry(before, path),
                before => YamlEditor.InsertEntry(before, map, key, NodeCopy.Of(theirs), after));
    }
}
