using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// How a file is laid out, taken from the first place that shows it, so that what is added looks the same.
/// </summary>
/// <param name="Step">Spaces that a mapping inside a mapping is indented further.</param>
/// <param name="ListStep">Spaces that a list's dashes are indented further than the list's key; may be 0.</param>
/// <param name="DashWidth">From a dash to its value: 2 for <c>- a</c>.</param>
internal readonly record struct PageLayout(int Step, int ListStep, int DashWidth)
{
    public static PageLayout Of(YamlTree tree)
    {
        var nodes = tree.Root is null
            ? []
            : tree.Root.DescendantsAndSelf().Where(node => node.Style == YamlStyle.Block).ToArray();
        return new(
            FirstOr(2, nodes.Where(node => node.IsMapping).Select(node => StepBelowKey(tree.Source, node)).Where(step => step > 0)),
            FirstOr(2, nodes.Where(node => node.IsSequence).Select(node => StepBelowKey(tree.Source, node)).Where(step => step >= 0)),
            FirstOr(2, nodes.SelectMany(node => node.Items).Select(item => DashWidthOf(tree.Source, item)).Where(width => width > 1)));
    }

    private static int StepBelowKey(SourceText source, YamlNode node) =>
        node.Parent is { IsMapping: true, Style: YamlStyle.Block } parent
        && parent.Pairs.FirstOrDefault(pair => pair.Value == node) is { } pair
        && source.LineOf(node.CoreStart) > source.LineOf(pair.Key.End)
            ? source.ColumnOf(node.CoreStart) - source.ColumnOf(parent.CoreStart)
            : -1;

    private static int DashWidthOf(SourceText source, YamlItem item) =>
        item.DashOffset is { } dash && !item.Value.IsEmpty && source.LineOf(dash) == source.LineOf(item.Value.Start)
            ? item.Value.Start - dash
            : -1;

    private static int FirstOr(int otherwise, IEnumerable<int> found) => found.DefaultIfEmpty(otherwise).First();
}
