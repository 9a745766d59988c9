using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Finds the line at fault when the library complains one line late: <c>name:LP-1</c>, <c>name</c> or <c>-space: 1</c>
/// start a value that goes on in the next line, where the next key then surprises it.
/// </summary>
internal static class MissingColon
{
    public static YamlProblem? Find(SourceText source, int offset, Exception error)
    {
        var isLate = IsLate(error.Message);
        if (!isLate && !IsSurprised(error.Message)) return null;
        var written = Enumerable.Range(1, source.PositionOf(offset).Line).Reverse().Select(source.LineSpan)
            .Where(line => source.Slice(line).TrimStart() is { Length: > 0 } text && text[0] != '#');
        foreach (var line in written.Take(2))
        {
            var text = source.Slice(line);
            if (SentenceFor(text.Trim(), isLate) is { } sentence)
                return YamlProblem.At(source, line.Start + text.Length - text.TrimStart().Length, sentence, error);
        }

        return null;
    }

    // A text went on into the next line, where a key then came: the line above is at fault.
    private static bool IsLate(string message) =>
        message.Contains("found invalid mapping", StringComparison.Ordinal)
        || message.Contains("could not find expected ':'", StringComparison.Ordinal);

    private static bool IsSurprised(string message) =>
        message.Contains("did not find expected key", StringComparison.Ordinal)
        || message.Contains("did not find expected '-'", StringComparison.Ordinal)
        || message.Contains("Mapping values are not allowed", StringComparison.Ordinal);

    private static string? SentenceFor(string text, bool isLate)
    {
        if (text == "-") return null;
        if (text[0] == '-' && text[1] is not (' ' or '\t' or '-')) return "a space is missing after '-'";
        if (text[0] == '-' && !isLate) return null;
        var entry = text.StartsWith("- ", StringComparison.Ordinal) ? text[2..].TrimStart() : text;
        if (entry.Length == 0 || !char.IsLetter(entry[0])) return null;
        var key = entry.TakeWhile(c => char.IsLetterOrDigit(c) || c is '_' or '-').Count();
        if (key < entry.Length && entry[key] == ':' && key + 1 < entry.Length && entry[key + 1] is not (' ' or '\t'))
            return $"a space is missing after '{entry[..key]}:'";
        return entry[key..].TrimStart() is [':' or '"' or '\'', ..] || entry.Contains(": ", StringComparison.Ordinal) || entry.EndsWith(':') ? null
            : $"a colon is missing after '{entry[..key]}'";
    }
}
