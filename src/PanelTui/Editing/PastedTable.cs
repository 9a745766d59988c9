using System.Collections.Immutable;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Editing;

/// <summary>Rows from a spreadsheet: cells with tabs between them, one entry a line, the keys on the first line if they are given.</summary>
internal static class PastedTable
{
    /// <param name="text">As pasted.</param>
    /// <param name="owner">The entries that the rows become, such as `circuits[].loads[]`.</param>
    /// <param name="columns">What the cells are where no line names them.</param>
    public static ImmutableArray<ImmutableArray<TypedValue>> Of(string text, string owner, ImmutableArray<string> columns)
    {
        var lines = text.Split(['\n', '\r'], StringSplitOptions.RemoveEmptyEntries)
            .Where(line => !string.IsNullOrWhiteSpace(line))
            .Select(line => line.Split('\t', StringSplitOptions.TrimEntries))
            .ToList();
        if (lines.Count == 0) return [];
        var named = lines[0].Select(KeyOf).ToImmutableArray();
        var known = FieldBook.Of(owner).Select(field => field.Key).ToHashSet();
        var isNamed = named.All(known.Contains);
        var keys = isNamed ? named : columns;
        return [.. lines.Skip(isNamed ? 1 : 0).Select(line => Entry(line, keys))];
    }

    private static ImmutableArray<TypedValue> Entry(string[] cells, ImmutableArray<string> keys) =>
        [.. cells.Select((cell, at) => new TypedValue(at < keys.Length ? keys[at] : $"column {at + 1}", cell))];

    /// <summary>`Moved from` as `moved_from`.</summary>
    private static string KeyOf(string cell)
    {
        var key = cell.Trim().ToLowerInvariant().Replace(' ', '_');
        return key == "load" ? "loads" : key;
    }
}
