using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Puts the first entry of a collection by indentation where nothing, or an empty pair of brackets, stands.
/// </summary>
internal static class EmptyPlace
{
    /// <param name="draft">The edit in the making.</param>
    /// <param name="node">What stands there now; null in a file that holds nothing.</param>
    /// <param name="listStep">How much further than its key the collection is indented.</param>
    /// <param name="write">Writes the entry as it stands in the given column.</param>
    public static IEnumerable<TextEdit> Fill(Draft draft, YamlNode? node, int listStep, Func<int, Rendered> write)
    {
        if (node?.Parent is null) return AtTop(draft.Source, node, write(0));
        var column = ColumnUnder(draft, node, listStep);
        var text = write(column);
        return Under(draft.Source, node, text with { Inline = new string(' ', column) + text.Inline });
    }

    private static int ColumnUnder(Draft draft, YamlNode node, int step) => node.Parent!.IsSequence
        ? draft.Source.ColumnOf(node.Parent.Items.First(item => item.Value == node).Start) + draft.Layout.DashWidth
        : draft.Source.ColumnOf(node.Parent.Pairs.First(pair => pair.Value == node).Start) + step;

    private static TextEdit[] AtTop(SourceText source, YamlNode? node, Rendered text)
    {
        if (node is { IsEmpty: false }) return [new(node.Span, text.Joined(source.NewLine))];
        var at = node is null ? source.Text.Length : source.Lines.NextStartOf(source.LineBefore(node.CoreStart));
        return [TextEdit.Insert(at, text.Joined(source.NewLine) + source.NewLine)];
    }

    // The brackets go, with the blanks before them; a comment on the line stays.
    private static TextEdit[] Under(SourceText source, YamlNode node, Rendered text)
    {
        var line = source.LineOf(node.End);
        var lineBreak = source.BreakNear(line);
        var lines = TextEdit.Insert(source.EndOfLine(line), lineBreak + text.Joined(lineBreak));
        return node.IsEmpty
            ? [lines]
            : [TextEdit.Remove(TextSpan.Between(source.BlanksBefore(node.CoreStart), node.End)), lines];
    }
}
