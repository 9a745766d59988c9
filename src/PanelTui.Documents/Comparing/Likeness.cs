using PanelTui.Documents.Yaml;
using PanelTui.Engine;

namespace PanelTui.Documents.Comparing;

/// <summary>What a value says, as one text to compare by: the order of keys, quotes, layout and comments play no part.</summary>
internal static class Likeness
{
    public static string Of(YamlNode? written)
    {
        if (written is null) return "";
        var node = Aliases.Resolve(written);
        return node.Kind switch
        {
            YamlKind.Sequence => $"[{string.Join(",", Aliases.ItemsOf(node).Select(Of))}]",
            YamlKind.Mapping => $"{{{string.Join(",", Entries(node).Order(StringComparer.Ordinal))}}}",
            YamlKind.Scalar or YamlKind.Alias => Scalar(node),
            _ => throw Unnamed.Of(node.Kind),
        };
    }

    public static bool Same(YamlNode? one, YamlNode? other) => Of(one) == Of(other);

    /// <summary>Whether nothing is said: no value, null, or an empty pair of brackets.</summary>
    public static bool IsNothing(YamlNode? written) => Of(written) is "" or "~" or "[]" or "{}";

    /// <summary>True when the value is null, however that is written.</summary>
    public static bool IsNull(YamlNode value) =>
        Aliases.Resolve(value) is { IsPlain: true } plain && ScalarText.Resolve(plain.Value) == CoreType.Null;

    private static IEnumerable<string> Entries(YamlNode map) =>
        Aliases.EntriesOf(map).Select(entry => $"{Literal(entry.Key)}:{Of(entry.Value)}");

    private static string Scalar(YamlNode node) =>
        IsNull(node) ? "~" : Literal(node.Value);

    private static string Literal(string text) =>
        $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
