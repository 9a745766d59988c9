using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>Adds an entry to a mapping: a line of its own, or a place between the braces.</summary>
internal static class EntryInsertion
{
    public static TextChange Of(YamlTree tree, YamlPath path, NewEntry entry, Func<ImmutableArray<YamlPair>, int> placeOf)
    {
        var draft = Draft.Of(tree);
        var node = path.IsRoot ? draft.Tree.Root : draft.NodeAt(path);
        Refuse(path, node, entry.Key);
        var index = node is null ? 0 : Math.Clamp(placeOf(node.Pairs), 0, node.Pairs.Length);
        var styled = entry with { Value = NeighbourStyle.ForEntry(entry.Value, node) };
        var ways = NodeWriter.Both(draft.Layout).Select(writer => Edits(draft, node, index, styled, writer));
        return draft.Commit($"add {entry.Key}", ways, draft.With(path, old => old.WithEntry(index, entry)));
    }

    /// <summary>The same as one of several edits that are made at once, in a mapping that has entries.</summary>
    /// <exception cref="CannotEdit">It cannot be made.</exception>
    public static PlannedEdit Plan(Draft draft, YamlPath path, NewEntry entry, Func<ImmutableArray<YamlPair>, int> placeOf)
    {
        var node = draft.NodeAt(path);
        Refuse(path, node, entry.Key);
        var index = Math.Clamp(placeOf(node.Pairs), 0, node.Pairs.Length);
        var styled = entry with { Value = NeighbourStyle.ForEntry(entry.Value, node) };
        return new(path, old => old.WithEntry(index, entry), [.. Edits(draft, node, index, styled, NodeWriter.Both(draft.Layout)[0])]);
    }

    private static void Refuse(YamlPath path, YamlNode? node, string key)
    {
        if (node is null || node.IsEmpty) return;
        if (node.Kind == YamlKind.Alias)
            throw new CannotEdit($"{path} repeats a value from elsewhere; change it where it is marked &{node.Value}");
        if (!node.IsMapping) throw new CannotEdit($"{path} is not a mapping, so it can hold no {key}");
        if (node.ValueOf(key) is not null) throw new CannotEdit($"{path} has {key} already");
    }

    private static IEnumerable<TextEdit> Edits(Draft draft, YamlNode? node, int index, NewEntry entry, NodeWriter writer)
    {
        if (node is null || node.IsEmpty)
        {
            return node is not null && node.IsInFlow()
                ? [TextEdit.Insert(node.CoreStart, $" {{{writer.FlowEntry(entry.Key, entry.Value)}}}")]
                : EmptyPlace.Fill(draft, node, draft.Layout.Step, column => writer.Entry(entry.Key, entry.Value, column));
        }

        return node.Style == YamlStyle.Flow
            ? FlowInsertion.Of(new(draft.Tree, node), index, writer.FlowEntry(entry.Key, entry.Value))
            : [Line(draft.Source, node, index, column => writer.Entry(entry.Key, entry.Value, column))];
    }

    // After the line that holds the end of the entry before; the first entry goes before the first key, even after a
    // dash.
    private static TextEdit Line(SourceText source, YamlNode map, int index, Func<int, Rendered> write)
    {
        var column = source.ColumnOf(map.Pairs[0].Start);
        var text = write(column);
        var indent = new string(' ', column);
        if (index == 0)
        {
            var before = source.BreakNear(source.LineOf(map.CoreStart));
            return TextEdit.Insert(map.CoreStart, text.Joined(before) + before + indent);
        }

        var line = source.LineBefore(map.Pairs[index - 1].FullEnd);
        var after = source.BreakNear(line);
        return TextEdit.Insert(source.Lines.NextStartOf(line), indent + text.Joined(after) + after);
    }
}
