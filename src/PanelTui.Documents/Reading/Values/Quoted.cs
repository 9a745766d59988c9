using System.Globalization;
using System.Text;

namespace PanelTui.Documents.Reading.Values;

/// <summary>
/// A piece of the user's text as it stands in a sentence: in quotes, short, nothing in it that a terminal obeys.
/// </summary>
internal static class Quoted
{
    /// <summary>Longer than any sensible value, short enough that the sentence stays one line.</summary>
    private const int Longest = 40;

    public static string Of(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            if (quoted.Length > Longest) return quoted.Append("…\"").ToString();
            Append(quoted, rune);
        }

        return quoted.Append('"').ToString();
    }

    private static void Append(StringBuilder quoted, Rune rune)
    {
        if (IsPlain(rune)) quoted.Append(rune);
        else quoted.Append(CultureInfo.InvariantCulture, $"\\u{{{rune.Value:X}}}");
    }

    private static bool IsPlain(Rune rune) => Rune.GetUnicodeCategory(rune) is not
        (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
        or UnicodeCategory.ParagraphSeparator or UnicodeCategory.OtherNotAssigned or UnicodeCategory.PrivateUse);
}
