using System.Buffers;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Text;

/// <summary>
/// Refuses characters that YAML does not allow in a file, and those that readers of YAML take for line breaks.
/// </summary>
/// <remarks>The printable characters are those of the YAML 1.2.2 specification, production [1] c-printable.</remarks>
internal static class CharacterCheck
{
    private static readonly SearchValues<char> Suspects = SearchValues.Create(
    [
        .. "\u2028\u2029\uFEFF\uFFFE\uFFFF",
        .. Characters(0, 0x9F).Where(c => Reason(c) is not null),
        .. Characters(0xD800, 0xDFFF),
    ]);

    /// <summary>Throws for the first forbidden character or overlong line.</summary>
    public static void Check(string text, LineMap lines)
    {
        for (var at = NextSuspect(text, 0); at >= 0; at = NextSuspect(text, at + 1))
        {
            if (char.IsSurrogatePair(text, at)) at++;
            else throw new YamlProblem(Sentence(text[at]), lines.PositionOf(at), at);
        }

        for (var line = 1; line <= lines.Count; line++)
        {
            var withBreak = lines.NextStartOf(line) - lines.StartOf(line);
            if (withBreak <= TextLimits.LineLength || lines.SpanOf(line).Length <= TextLimits.LineLength) continue;
            var message = $"the line is longer than {TextLimits.LineLength:N0} characters";
            throw new YamlProblem(message, new(line, 1), lines.StartOf(line));
        }
    }

    private static IEnumerable<char> Characters(int first, int last) =>
        Enumerable.Range(first, last - first + 1).Select(code => (char)code);

    private static int NextSuspect(string text, int from)
    {
        var found = text.AsSpan(from).IndexOfAny(Suspects);
        return found < 0 ? -1 : from + found;
    }

    private static string Sentence(char found) =>
        char.IsSurrogate(found)
            ? $"half of a surrogate pair (U+{(int)found:X4}) is not a character"
            : $"the character U+{(int)found:X4} ({Reason(found)}) is not allowed in a schedule";

    private static string? Reason(char found) => found switch
    {
        '\t' or '\n' or '\r' => null,
        '\u001B' => "escape",
        '\0' => "NUL",
        < ' ' => "a control character",
        '\u007F' => "delete",
        '\u0085' => "next line",
        > '\u007F' and < '\u00A0' => "a control character",
        '\u2028' => "line separator",
        '\u2029' => "paragraph separator",
        '\uFEFF' => "byte order mark inside the text",
        '\uFFFE' or '\uFFFF' => "not a character",
        _ => null,
    };
}
