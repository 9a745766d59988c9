using System.Globalization;
using System.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>Whether a text may stand without quotes, and how it is written with them.</summary>
internal static class Quoting
{
    private const string NeverFirst = ",[]{}#&*!|>'\"%@`?:";
    private const string FlowIndicators = ",[]{}";

    /// <summary>Whether the text reads back the same without quotes; strict, since quotes never hurt.</summary>
    public static bool CanBePlain(string text, bool inFlow)
    {
        if (text.Length == 0 || char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1])) return false;
        if (NeverFirst.Contains(text[0], StringComparison.Ordinal) || text[^1] == ':') return false;
        if (text[0] == '-' && (text.Length == 1 || !char.IsLetterOrDigit(text[1]))) return false;
        if (text.StartsWith("...", StringComparison.Ordinal) || text.Any(NeedsEscape)) return false;
        if (text.Contains(": ", StringComparison.Ordinal) || text.Contains(" #", StringComparison.Ordinal))
            return false;
        return !inFlow || !text.AsSpan().ContainsAny(FlowIndicators);
    }

    /// <summary>
    /// Whether every reader takes the plain text for a text, not for a number, a boolean, a date or nothing.
    /// </summary>
    public static bool ReadsAsText(string text) =>
        ScalarText.Resolve(text) == CoreType.Text && !ScalarText.IsTrap(text);

    public static bool CanBeSingleQuoted(string text) => !text.Any(NeedsEscape);

    public static string SingleQuoted(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";

    public static string DoubleQuoted(string text)
    {
        var written = new StringBuilder("\"", text.Length + 2);
        foreach (var c in text) written.Append(Escaped(c));
        return written.Append('"').ToString();
    }

    private static string Escaped(char c) => c switch
    {
        '"' => "\\\"",
        '\\' => @"\\",
        '\n' => "\\n",
        '\r' => "\\r",
        '\t' => "\\t",
        '\u001B' => "\\e",
        '\0' => "\\0",
        _ when NeedsEscape(c) => c < 0x100 ? Hex("\\x", c, "X2") : Hex("\\u", c, "X4"),
        _ => c.ToString(),
    };

    private static string Hex(string prefix, int code, string format) =>
        prefix + code.ToString(format, CultureInfo.InvariantCulture);

    // What a schedule may not hold as it is, with tabs and line breaks, which quotes would fold.
    private static bool NeedsEscape(char c) =>
        char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF';
}
