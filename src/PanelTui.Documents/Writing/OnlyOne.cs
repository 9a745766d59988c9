using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Removes the last remaining entry of a collection by indentation: an empty pair of brackets takes its place.
/// </summary>
internal static class OnlyOne
{
    /// <param name="source">The text.</param>
    /// <param name="node">The collection.</param>
    /// <param name="start">Where its only entry starts.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="brackets">What takes its place.</param>
    public static TextEdit[] Remove(SourceText source, YamlNode node, int start, int end, string brackets) =>
        Remove(source, node, new LineRange(source.LineOf(start), source.LineBefore(end)), brackets);

    /// <summary>As above, with the lines that go.</summary>
    public static TextEdit[] Remove(SourceText source, YamlNode node, LineRange lines, string brackets)
    {
        var introduction = Introduction(node);
        if (introduction is null || source.LineOf(introduction.Value) == source.LineOf(node.CoreStart))
            return InPlace(source, node, lines, brackets);
        return [TextEdit.Insert(introduction.Value, " " + brackets), TextEdit.Remove(source.WholeLines(lines.First, lines.Last))];
    }

    private static TextEdit[] InPlace(SourceText source, YamlNode node, LineRange lines, string brackets)
    {
        var end = source.EndOfLine(lines.Last);
        var before = TextSpan.Between(source.Lines.StartOf(lines.First), source.Lines.StartOf(source.LineOf(node.CoreStart)));
        return [TextEdit.Remove(before), new(TextSpan.Between(node.CoreStart, Math.Min(node.End, end)), brackets)];
    }

    // Just after what the collection belongs to: its key's colon, its dash, or its own anchor and tag.
    private static int? Introduction(YamlNode node)
    {
        if (node.PropsEnd > node.Start) return node.PropsEnd;
        if (node.Parent is not { } parent) return null;
        return parent.IsMapping
            ? parent.Pairs.First(pair => pair.Value == node).ColonOffset + 1
            : parent.Items.First(item => item.Value == node).DashOffset + 1;
    }
}
