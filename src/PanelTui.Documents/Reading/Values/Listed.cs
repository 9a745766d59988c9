namespace PanelTui.Documents.Reading.Values;

/// <summary>Words in a row, as a sentence has them: `a, b or c`.</summary>
internal static class Listed
{
    public static string Or(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}",
    };
}
