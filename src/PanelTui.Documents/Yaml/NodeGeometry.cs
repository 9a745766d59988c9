using System.Collections.Immutable;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>Questions about where a node stands among others.</summary>
internal static class NodeGeometry
{
    /// <summary>The column, from 0, of the innermost collection by indentation around the node; 0 at the top.</summary>
    public static int BlockColumn(this YamlNode node, SourceText source)
    {
        for (var around = node.Parent; around is not null; around = around.Parent)
        {
            if (around.Style == YamlStyle.Block) return source.PositionOf(FirstIndicator(around, node)).Column - 1;
        }

        return 0;
    }

    /// <summary>Whether the node stands inside brackets.</summary>
    public static bool IsInFlow(this YamlNode node) => node.Parent?.Style == YamlStyle.Flow;

    public static void ForEach<T>(this ImmutableArray<T> all, Action<T> act)
    {
        foreach (var one in all) act(one);
    }

    // While the tree is being placed, the collection's own start is not known yet; its first entry's is.
    private static int FirstIndicator(YamlNode around, YamlNode inside) =>
        around.IsMapping ? around.Pairs[0].Start
        : around.Items[0].DashOffset ?? inside.Start;
}
