using System.Collections.Immutable;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>What a person types for a list: the entries with commas between them, brackets or none.</summary>
internal static class Typed
{
    public static ImmutableArray<string> List(string text)
    {
        var inner = text.Trim();
        if (inner.StartsWith('[') && inner.EndsWith(']')) inner = inner[1..^1];
        return [.. inner.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
    }
}
