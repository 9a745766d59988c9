using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Removes an entry from a mapping: its lines, or its place between the braces. Comments above it stay.
/// </summary>
internal static class EntryRemoval
{
    public static TextChange Of(YamlTree tree, YamlPath path)
    {
        var draft = Draft.Of(tree);
        var plan = Plan(draft, path);
        return draft.Commit($"remove {path.Last}", plan.Edits, draft.With(plan.Path, plan.Change));
    }

    /// <summary>The same as one of several edits that are made at once.</summary>
    /// <exception cref="CannotEdit">It cannot be made.</exception>
    public static PlannedEdit Plan(Draft draft, YamlPath path)
    {
        if (path.IsRoot || path.Last.Key is null) throw new CannotEdit($"{path} is not an entry of a mapping");
        draft.NodeAt(path);
        var map = draft.NodeAt(path.Parent);
        var index = map.Pairs.IndexOf(map.PairOf(path.Last.Key)!);
        return new(path.Parent, old => old.WithoutEntry(index), [.. Edits(draft, map, index)]);
    }

    private static IEnumerable<TextEdit> Edits(Draft draft, YamlNode map, int index)
    {
        if (map.Style == YamlStyle.Flow) return FlowRemoval.Of(new(draft.Tree, map), index);
        if (map.Pairs.Length == 1)
            return OnlyOne.Remove(draft.Source, map, map.Pairs[0].Start, map.Pairs[0].FullEnd, "{}");
        var pair = map.Pairs[index];
        return draft.Source.StartsItsLine(pair.Start)
            ? [TextEdit.Remove(draft.Source.WholeLines(draft.Source.LineOf(pair.Start), draft.Source.LineBefore(pair.FullEnd)))]
            : [TextEdit.Remove(AfterDash(draft.Source, pair, map.Pairs[1]))];
    }

    // The first entry, after a dash: the next one takes its place where it follows at once; otherwise the dash stays
    // alone.
    private static TextSpan AfterDash(SourceText source, YamlPair pair, YamlPair next)
    {
        var end = source.LineBefore(pair.FullEnd);
        if (source.LineOf(next.Start) == end + 1) return TextSpan.Between(pair.Start, next.Start);
        var rest = source.AfterBlanks(pair.Span.End);
        return source.Text[rest] == '#'
            ? TextSpan.Between(pair.Start, rest)
            : TextSpan.Between(source.BlanksBefore(pair.Start), pair.Span.End);
    }
}
