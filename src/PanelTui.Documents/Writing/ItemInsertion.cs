using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Adds an item to a list: lines of its own, spaced like the others, or a place between the brackets.
/// </summary>
internal static class ItemInsertion
{
    public static TextChange Of(YamlTree tree, YamlPath path, int index, NewNode value)
    {
        var draft = Draft.Of(tree);
        var list = path.IsRoot ? draft.Tree.Root : draft.NodeAt(path);
        Refuse(path, list, index);
        var styled = NeighbourStyle.ForItem(value, list, index);
        var ways = NodeWriter.Both(draft.Layout).Select(writer => Edits(draft, list, index, styled, writer));
        return draft.Commit("add to the list", ways, draft.With(path, old => old.WithItem(index, value.Meaning)));
    }

    private static void Refuse(YamlPath path, YamlNode? list, int index)
    {
        var count = list?.Items.Length ?? 0;
        if (list is { IsEmpty: false, IsSequence: false }) throw new CannotEdit($"{path} is not a list");
        if (index < 0 || index > count)
            throw new CannotEdit($"{path} has {count} items, so none can be put at place {index}");
    }

    private static IEnumerable<TextEdit> Edits(Draft draft, YamlNode? list, int index, NewNode value, NodeWriter writer)
    {
        if (list is null || list.IsEmpty || BecomesBlock(draft, list, value))
        {
            return list is { IsEmpty: true } && list.IsInFlow()
                ? [TextEdit.Insert(list.CoreStart, $" [{writer.Flow(value)}]")]
                : EmptyPlace.Fill(draft, list, draft.Layout.ListStep, column => writer.Item(value, column));
        }

        return list.Style == YamlStyle.Flow
            ? FlowInsertion.Of(new(draft.Tree, list), index, writer.Flow(value))
            : [Lines(draft, list, index, column => writer.Item(value, column))];
    }

    // Single values stay in the brackets; a mapping, such as a circuit, gets lines of its own.
    private static bool BecomesBlock(Draft draft, YamlNode list, NewNode value) =>
        list is { Style: YamlStyle.Flow, Items.IsEmpty: true } && !list.IsInFlow() && value is not NewScalar
        && draft.Source.Slice(list.Span) is var brackets && brackets[1..^1].AsSpan().IsWhiteSpace()
        && !brackets.AsSpan().ContainsAny('\r', '\n');

    private static TextEdit Lines(Draft draft, YamlNode list, int index, Func<int, Rendered> write)
    {
        var source = draft.Source;
        var column = source.ColumnOf(list.Items[0].Start);
        var text = write(column);
        var indent = new string(' ', column);
        var regions = ItemRegions.Of(source, list);
        if (index == 0) return First(source, list, text, indent, BlankLines.Separate(source, regions));
        var line = regions[index - 1].Last;
        var lineBreak = source.BreakNear(line);
        var gap = BlankLines.Separate(source, regions) ? lineBreak : "";
        return TextEdit.Insert(source.Lines.NextStartOf(line), gap + indent + text.Joined(lineBreak) + lineBreak);
    }

    private static TextEdit First(SourceText source, YamlNode list, Rendered text, string indent, bool isSpaced)
    {
        var dash = list.Items[0].Start;
        var lineBreak = source.BreakNear(source.LineOf(dash));
        var gap = isSpaced ? lineBreak : "";
        if (!source.StartsItsLine(dash))
            return TextEdit.Insert(dash, text.Joined(lineBreak) + lineBreak + gap + indent);
        var at = source.Lines.StartOf(ItemRegions.Of(source, list)[0].First);
        return TextEdit.Insert(at, indent + text.Joined(lineBreak) + lineBreak + gap);
    }
}
