using System.Globalization;
using System.Text;

namespace PanelTui.Presentation;

/// <summary>Which characters a terminal shows as something a reader can see, in the order they were written.</summary>
/// <remarks>
/// Refused are controls, format characters (bidirectional controls, zero-width joiners, tags), line separators,
/// private use, what Unicode has not assigned, and the invisible or width-changing ones listed here one by one
/// (Unicode Standard Annex 44, property Default_Ignorable_Code_Point; the list itself is from memory).
/// </remarks>
internal static class ShowableRunes
{
    private static readonly (int First, int Last)[] Refused =
    [
        (0x034F, 0x034F), // combining grapheme joiner
        (0x115F, 0x1160), // Hangul fillers
        (0x17B4, 0x17B5), // Khmer vowels that are not written
        (0x180B, 0x180F), // Mongolian variation selectors
        (0x2800, 0x2800), // blank braille pattern
        (0x3164, 0x3164), // Hangul filler
        (0xFE00, 0xFE0F), // variation selectors
        (0xFFA0, 0xFFA0), // halfwidth Hangul filler
        (0x1F1E6, 0x1F1FF), // halves of flags
        (0x1F3FB, 0x1F3FF), // skin tones
        (0xE0100, 0xE01EF), // variation selectors
    ];

    public static bool Has(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format
            or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
        && !IsRefused(rune.Value);

    private static bool IsRefused(int value)
    {
        foreach (var (first, last) in Refused)
        {
            if (value >= first && value <= last)
                return true;
        }

        return false;
    }
}
