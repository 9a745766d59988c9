using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace PanelTui.Presentation;

/// <summary>Letters that cannot be seen, as a field shows them while its text is edited: ⟨U+202E⟩, and back again.</summary>
/// <remarks>
/// A run of one letter is one mark, ⟨U+0301×390⟩: spelled out, a tower of marks over one letter would fill a field with thousands of
/// characters, and the library takes the square of their number for each paint.
/// </remarks>
internal static partial class HiddenLetters
{
    /// <summary>No field holds more letters; a number that someone typed is not a reason to make as many.</summary>
    private const int LongestRun = 2_000;

    public static string Shown(string text) =>
        Run().Replace(DisplayText.Clean(text), match => $"⟨U+{match.Groups[2].Value}×{match.Length / match.Groups[1].Length}⟩");

    /// <summary>The text with each mark turned back into the letter it stands for.</summary>
    public static string Back(string text) => Mark().Replace(text, match =>
        Rune.TryCreate(int.Parse(match.Groups[1].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture), out var rune)
        && CountOf(match.Groups[2]) is { } count
            ? string.Concat(Enumerable.Repeat($"{rune}", count))
            : match.Value);

    private static int? CountOf(Group count) =>
        !count.Success ? 1
        : int.Parse(count.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture) is var times and <= LongestRun ? times
        : null;

    [GeneratedRegex("⟨U\\+([0-9A-F]{4,6})(?:×([0-9]{1,4}))?⟩")]
    private static partial Regex Mark();

    /// <summary>Three marks of the same letter or more.</summary>
    [GeneratedRegex("(⟨U\\+([0-9A-F]{4,6})⟩)\\1{2,}")]
    private static partial Regex Run();
}
