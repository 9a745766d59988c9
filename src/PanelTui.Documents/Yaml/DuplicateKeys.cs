using System.Collections.Immutable;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Keys that one mapping holds twice. YAML forbids them; the tree keeps both, so that both can be shown.
/// </summary>
public static class DuplicateKeys
{
    public static ImmutableArray<DuplicateKey> Of(YamlTree tree) =>
        tree.Root is null ? [] : [.. tree.Root.DescendantsAndSelf().SelectMany(Of)];

    private static IEnumerable<DuplicateKey> Of(YamlNode node)
    {
        var first = new Dictionary<string, TextSpan>(StringComparer.Ordinal);
        foreach (var key in node.Pairs.Select(pair => pair.Key).Where(key => key.IsScalar))
        {
            if (!first.TryAdd(key.Value, key.Span)) yield return new(key.Value, first[key.Value], key.Span);
        }
    }
}

/// <summary>A key with the places of its first use and of the one that repeats it.</summary>
public readonly record struct DuplicateKey(string Key, TextSpan First, TextSpan Second);
