using System.Collections.Immutable;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// What a tree means once its aliases (<c>*name</c>) and merge keys (<c>&lt;&lt;</c>) are filled in. For reading only.
/// </summary>
/// <remarks>
/// Call <see cref="Check"/> once for a tree before walking it this way: it rules out cycles and explosions.
/// </remarks>
public static class Aliases
{
    private const string MergeKey = "<<";

    /// <exception cref="YamlProblem">
    /// An alias contains itself, too much comes of them, or <c>&lt;&lt;</c> names no mapping.
    /// </exception>
    public static void Check(YamlTree tree)
    {
        if (tree.Root is not null) new AliasBudget(tree.Source).Measure(tree.Root);
    }

    /// <summary>What the node stands for: itself, or what its alias names.</summary>
    public static YamlNode Resolve(YamlNode node) => node.Target ?? node;

    /// <summary>The values of a sequence, aliases resolved.</summary>
    public static ImmutableArray<YamlNode> ItemsOf(YamlNode node) =>
        [.. Resolve(node).Items.Select(item => Resolve(item.Value))];

    /// <summary>
    /// The entries of a mapping, aliases resolved: its own first, then those that <c>&lt;&lt;</c> adds and that are not its own.
    /// Of two merged mappings the earlier counts. Duplicate keys of its own are all listed.
    /// </summary>
    public static ImmutableArray<EffectiveEntry> EntriesOf(YamlNode node)
    {
        var pairs = Resolve(node).Pairs;
        var entries = ImmutableArray.CreateBuilder<EffectiveEntry>(pairs.Length);
        entries.AddRange(pairs.Where(pair => !IsMerge(pair)).Select(Own));
        var known = entries.Select(entry => entry.Key).ToHashSet(StringComparer.Ordinal);
        entries.AddRange(pairs.Where(IsMerge).SelectMany(MergedBy).Where(entry => known.Add(entry.Key)));
        return entries.DrainToImmutable();
    }

    /// <summary>The value of a key, as <see cref="EntriesOf"/> lists it first; null where the mapping has no such key.</summary>
    public static YamlNode? ValueOf(YamlNode node, string key)
    {
        var pairs = Resolve(node).Pairs;
        foreach (var pair in pairs)
        {
            if (pair.Key.IsScalar && pair.Key.Value == key && !IsMerge(pair)) return Resolve(pair.Value);
        }

        return pairs.Where(IsMerge).SelectMany(pair => MergeSources(pair)).Select(source => ValueOf(source, key)).FirstOrDefault(found => found is not null);
    }

    internal static bool IsMerge(YamlPair pair) => pair.Key.IsPlain && pair.Key.Value == MergeKey;

    /// <summary>The mappings that the value of <c>&lt;&lt;</c> names: one, or a list of them.</summary>
    internal static ImmutableArray<YamlNode> MergeSources(YamlPair merge) =>
        Resolve(merge.Value) is { IsSequence: true } list ? ItemsOf(list) : [Resolve(merge.Value)];

    private static EffectiveEntry Own(YamlPair pair) => new(pair, Resolve(pair.Value), IsMerged: false);

    private static IEnumerable<EffectiveEntry> MergedBy(YamlPair merge) =>
        from source in MergeSources(merge)
        from entry in EntriesOf(source)
        select entry with { IsMerged = true };
}
