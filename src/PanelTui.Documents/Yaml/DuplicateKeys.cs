using System.Collections.Immutable;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Keys that one mapping holds twice. YAML forbids them; the tree keeps both, so that both can be shown.
/// </summary>
public static class DuplicateKeys
{
    public static ImmutableArray<DuplicateKey> Of(YamlTree tree)
    {
        var found = ImmutableArray.CreateBuilder<DuplicateKey>();
        if (tree.Root is not null) Collect(tree.Root, new(StringComparer.Ordinal), found);
        return found.DrainToImmutable();
    }

    /// <param name="node">Where to look, and below it; the parser bounds the depth.</param>
    /// <param name="first">Used for one mapping after the other: this runs at every keystroke.</param>
    /// <param name="found">Takes what is found.</param>
    private static void Collect(YamlNode node, Dictionary<string, TextSpan> first, ImmutableArray<DuplicateKey>.Builder found)
    {
        first.Clear();
        foreach (var pair in node.Pairs)
        {
            if (pair.Key.IsScalar && !first.TryAdd(pair.Key.Value, pair.Key.Span))
                found.Add(new(pair.Key.Value, first[pair.Key.Value], pair.Key.Span));
        }

        foreach (var pair in node.Pairs)
        {
            if (!pair.Key.IsScalar) Collect(pair.Key, first, found);
            if (!pair.Value.IsScalar) Collect(pair.Value, first, found);
        }

        foreach (var item in node.Items) Collect(item.Value, first, found);
    }
}

/// <summary>A key with the places of its first use and of the one that repeats it.</summary>
public readonly record struct DuplicateKey(string Key, TextSpan First, TextSpan Second);
