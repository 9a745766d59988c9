namespace PanelTui.Documents.Yaml;

/// <summary>How much structure a file may have. A schedule of 84 circuits is 5 deep and has 3,000 values.</summary>
/// <param name="Depth">Collections inside collections; bounds every recursion over the tree.</param>
/// <param name="Nodes">Keys and values in all.</param>
/// <param name="Aliases">Values that repeat another by <c>*name</c>.</param>
/// <param name="ScalarLength">Characters of one value.</param>
public sealed record ParseLimits(int Depth = 32, int Nodes = 200_000, int Aliases = 1_000, int ScalarLength = 64 * 1024)
{
    public static ParseLimits Default { get; } = new();
}
