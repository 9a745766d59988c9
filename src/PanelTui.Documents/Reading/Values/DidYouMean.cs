namespace PanelTui.Documents.Reading.Values;

/// <summary>The known word that a mistyped one was probably meant to be.</summary>
public static class DidYouMean
{
    /// <summary>Longer words are not compared: no key or id that a person types is longer.</summary>
    private const int Longest = 60;

    /// <summary>The rest of a sentence, `; did you mean gfci?`, or nothing where no word is near.</summary>
    public static string Hint(string found, IEnumerable<string> words) =>
        Closest(found, words) is { } word ? $"; did you mean {word}?" : "";

    /// <summary>The end of a sentence, `; did you mean gfci?`, or the full stop where no word is near.</summary>
    public static string Ending(string found, IEnumerable<string> words) => Hint(found, words) is { Length: > 0 } hint ? hint : ".";

    public static string? Closest(string found, IEnumerable<string> words)
    {
        if (found.Length is 0 or > Longest || !found.Any(char.IsLetter)) return null;
        var known = words.ToList();
        return Mistyped(Plain(found), known) ?? Shortened(Plain(found), known);
    }

    private static string? Mistyped(string key, IEnumerable<string> words) =>
        words
            .Where(word => word.Length <= Longest)
            .Select(word => (Word: word, Steps: Distance(key, Plain(word))))
            .Where(near => near.Steps <= Allowed(near.Word))
            .OrderBy(near => near.Steps)
            .Select(near => near.Word)
            .FirstOrDefault();

    /// <summary>
    /// `auto` for automatic, `lights` for lighting, `optional` for dwelling-optional; nothing where several words
    /// would do.
    /// </summary>
    private static string? Shortened(string key, IReadOnlyList<string> words)
    {
        if (key.Length < 4) return null;
        var near = words.Where(word => IsShortFor(key, Plain(word))).ToList();
        return near.Count == 1 ? near[0] : null;
    }

    private static bool IsShortFor(string key, string word) =>
        word.StartsWith(key[..4], StringComparison.Ordinal) || word.EndsWith(key, StringComparison.Ordinal);

    private static int Allowed(string word) => word.Length switch { <= 3 => 1, <= 8 => 2, _ => 3 };

    private static string Plain(string word) => word.Trim().Replace('_', '-').Replace(' ', '-').ToUpperInvariant();

    /// <summary>Letters added, dropped, changed, or two neighbours swapped (optimal string alignment).</summary>
    private static int Distance(string left, string right)
    {
        int[] before = [], above = [.. Enumerable.Range(0, right.Length + 1)];
        for (var row = 1; row <= left.Length; row++)
        {
            var current = new int[right.Length + 1];
            current[0] = row;
            for (var column = 1; column <= right.Length; column++)
            {
                var changed = above[column - 1] + (left[row - 1] == right[column - 1] ? 0 : 1);
                current[column] = Math.Min(changed, Math.Min(above[column], current[column - 1]) + 1);
                if (Swapped(left, right, row, column))
                    current[column] = Math.Min(current[column], before[column - 2] + 1);
            }

            (before, above) = (above, current);
        }

        return above[right.Length];
    }

    private static bool Swapped(string left, string right, int row, int column) =>
        row > 1 && column > 1 && left[row - 1] == right[column - 2] && left[row - 2] == right[column - 1];
}
