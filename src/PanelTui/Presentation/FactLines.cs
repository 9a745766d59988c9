using PanelTui.Documents;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;

namespace PanelTui.Presentation;

/// <summary>A schedule as one fact a line, each with the circuit it belongs to, so that git's diff of lines shows facts.</summary>
internal static class FactLines
{
    public static IEnumerable<string> Of(Snapshot snapshot) => (snapshot.Tree?.Root is { } root
        ? Below(root, "")
        : snapshot.Source.Text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')).Select(line => DisplayText.Clean(line));

    // Aliases stay names: filling them in could make more lines than anybody reads.
    private static IEnumerable<string> Below(YamlNode node, string path) => node.Kind switch
    {
        YamlKind.Mapping when node.Pairs.Length > 0 => node.Pairs.SelectMany(pair => Below(pair.Value, $"{path}/{pair.Key.Value}")),
        YamlKind.Sequence when node.Items.Any(item => item.Value.IsMapping) =>
            node.Items.SelectMany((item, index) => Below(item.Value, $"{path}[{NameOf(item.Value, index)}]")),
        YamlKind.Sequence => [$"{path}: {string.Join(", ", node.Items.Select(item => item.Value.Value))}"],
        YamlKind.Alias => [$"{path}: *{node.Value}"],
        YamlKind.Scalar or YamlKind.Mapping => [$"{path}: {node.Value}"],
        _ => throw Unnamed.Of(node.Kind),
    };

    private static string NameOf(YamlNode entry, int index)
    {
        if (entry.ValueOf("id") is { } id) return id.Value;
        if (entry.ValueOf("space") is { } space) return $"space {space.Value}";
        return entry.ValueOf("name")?.Value ?? entry.ValueOf("rule")?.Value ?? $"{index + 1}";
    }
}
