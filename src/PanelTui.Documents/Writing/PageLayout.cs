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
    private const int Usual = 2;

    public static PageLayout Of(YamlTree tree)
    {
        var found = new Found(tree.Source);
        if (tree.Root is { } root) found.Look(root);
        return new(found.Step ?? Usual, found.ListStep ?? Usual, found.DashWidth ?? Usual);
    }

    /// <summary>What has been seen so far on the way down the file.</summary>
    private sealed class Found(SourceText source)
    {
        public int? Step { get; private set; }

        public int? ListStep { get; private set; }

        public int? DashWidth { get; private set; }

        public void Look(YamlNode node)
        {
            if (Step is not null && ListStep is not null && DashWidth is not null) return;
            foreach (var pair in node.Pairs)
            {
                if (node.Style == YamlStyle.Block) LookBelow(node, pair);
                Look(pair.Key);
                Look(pair.Value);
            }

            foreach (var item in node.Items)
            {
                if (node.Style == YamlStyle.Block) LookAfter(item);
                Look(item.Value);
            }
        }

        private void LookBelow(YamlNode mapping, YamlPair pair)
        {
            var value = pair.Value;
            if (value.Style != YamlStyle.Block || source.LineOf(value.CoreStart) <= source.LineOf(pair.Key.End)) return;
            var step = source.ColumnOf(value.CoreStart) - source.ColumnOf(mapping.CoreStart);
            if (value.IsMapping && step > 0) Step ??= step;
            if (value.IsSequence && step >= 0) ListStep ??= step;
        }

        private void LookAfter(YamlItem item)
        {
            if (item.DashOffset is not { } dash || item.Value.IsEmpty || source.LineOf(dash) != source.LineOf(item.Value.Start)) return;
            if (item.Value.Start - dash > 1) DashWidth ??= item.Value.Start - dash;
        }
    }
}
