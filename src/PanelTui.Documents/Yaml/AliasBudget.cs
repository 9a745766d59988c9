using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>Measures what a tree becomes when its aliases are filled in, without filling them in.</summary>
/// <remarks>
/// Children are measured before their parents and anchored values before their aliases, so the recursion is as deep as
/// the text, not as the aliases make it. A value whose measure is still missing when an alias asks for it contains that alias.
/// </remarks>
internal sealed class AliasBudget(SourceText source)
{
    /// <summary>Values after all aliases are filled in; a schedule of 84 circuits has 3,000.</summary>
    public const int Nodes = 100_000;

    /// <summary>
    /// Collections inside collections after all aliases are filled in: bounds the recursion of readers.
    /// </summary>
    public const int Depth = 64;

    /// <summary>Characters of values after all aliases are filled in: as many as the largest file has.</summary>
    public const int Characters = TextLimits.Bytes;

    private readonly Dictionary<YamlNode, Extent> _known = [];

    public Extent Measure(YamlNode node)
    {
        var extent = new Extent(1, 1, node.IsScalar ? node.Value.Length : 0);
        if (node.Target is { } target) extent = extent.Around(ExtentOf(target, node));
        foreach (var child in node.Children) extent = extent.Around(Measure(child));
        if (extent.Nodes > Nodes) throw Problem(node, $"more than {Nodes:N0} values after the aliases are filled in");
        if (extent.Characters > Characters)
            throw Problem(node, $"more than {Characters:N0} characters after the aliases are filled in");
        if (extent.Depth > Depth)
            throw Problem(node, $"values are nested deeper than {Depth} levels after the aliases are filled in");
        foreach (var pair in node.Pairs.Where(Aliases.IsMerge)) CheckMerge(pair);
        return _known[node] = extent;
    }

    private Extent ExtentOf(YamlNode target, YamlNode alias) =>
        _known.TryGetValue(target, out var extent) ? extent : throw Problem(alias, $"the alias *{alias.Value} contains itself");

    private void CheckMerge(YamlPair merge)
    {
        if (Aliases.MergeSources(merge).All(named => named.IsMapping)) return;
        throw Problem(merge.Value, "<< takes over the entries of a mapping; expected the *name of one, or a list of such names");
    }

    private YamlProblem Problem(YamlNode node, string message) => YamlProblem.At(source, node.Start, message);

    /// <summary>How many values there are, how deep they are nested, and how many characters they have.</summary>
    internal readonly record struct Extent(long Nodes, int Depth, long Characters)
    {
        public Extent Around(Extent child) =>
            new(Nodes + child.Nodes, Math.Max(Depth, child.Depth + 1), Characters + child.Characters);
    }
}
