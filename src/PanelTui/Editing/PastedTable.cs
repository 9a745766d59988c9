using System.Collections.Immutable;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>Rows from a spreadsheet: cells with tabs between them, one entry a line, the keys on the first line if they are given.</summary>
internal static class PastedTable
{
    /// <param name="text">As pasted.</param>
    /// <param name="owner">The entries that the rows become, such as `circuits[].loads[]`.</param>
    /// <param name="columns">What the cells are where no line names them.</param>
    public static ImmutableArray<ImmutableArray<TypedValue>> Of(string text, string owner, ImmutableArray<string> columns)
    {
        var lines = SpreadsheetText.Rows(text);
        if (lines.IsEmpty) return [];
        var named = lines[0].Select(KeyOf).ToImmutableArray();
        var known = FieldBook.Of(owner).Select(field => field.Key).ToHashSet();
        var isNamed = named.All(known.Contains);
        var keys = isNamed ? named : columns;
        return [.. lines.Skip(isNamed ? 1 : 0).Select(line => Entry(line, keys))];
    }

    private static ImmutableArray<TypedValue> Entry(ImmutableArray<string> cells, ImmutableArray<string> keys) =>
        [.. cells.Select((cell, at) => new TypedValue(at < keys.Length ? keys[at] : $"column {at + 1}", cell))];

    /// <summary>`Soft start` as `soft_start`.</summary>
    private static string KeyOf(string cell) => cell.ToLowerInvariant().Replace(' ', '_');
}
