namespace PanelTui.Presentation;

/// <summary>A sentence over several rows, broken at blanks; a word that is too long is broken where the row ends.</summary>
internal static class Wrapped
{
    public static IEnumerable<string> Of(string sentence, int columns)
    {
        var row = "";
        foreach (var word in sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Cut(word, columns)))
        {
            if (row.Length > 0 && DisplayText.Width(row) + 1 + DisplayText.Width(word) > columns)
            {
                yield return row;
                row = "";
            }

            row = row.Length == 0 ? word : $"{row} {word}";
        }

        if (row.Length > 0) yield return row;
    }

    private static IEnumerable<string> Cut(string word, int columns) =>
        DisplayText.Width(word) <= columns ? [word] : word.Chunk(Math.Max(1, columns)).Select(part => new string(part));
}
