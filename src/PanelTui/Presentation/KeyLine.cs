using System.Collections.Immutable;

namespace PanelTui.Presentation;

/// <summary>The keys that work here, most useful first; what does not fit the width is left to the page of keys.</summary>
internal static class KeyLine
{
    private const string Between = "  ";

    public static ImmutableArray<TextRun> Of(IEnumerable<(string Key, string Word)> keys, int columns)
    {
        var runs = ImmutableArray.CreateBuilder<TextRun>();
        var room = columns - 1;
        foreach (var (key, word) in keys)
        {
            var columnsOfKey = DisplayText.Width(key) + 1 + DisplayText.Width(word) + Between.Length;
            if (columnsOfKey - Between.Length > room) continue;
            runs.Add(new TextRun(runs.Count == 0 ? $" {key}" : key, Tone.Strong));
            runs.Add(new TextRun($" {word}{Between}"));
            room -= columnsOfKey;
        }

        if (runs is [.., var last]) runs[^1] = last with { Text = last.Text.TrimEnd() };
        return runs.ToImmutable();
    }
}
