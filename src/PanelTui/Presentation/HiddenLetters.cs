using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace PanelTui.Presentation;

/// <summary>Letters that cannot be seen, as a field shows them while its text is edited: ⟨U+202E⟩, and back again.</summary>
internal static partial class HiddenLetters
{
    public static string Shown(string text) => DisplayText.Clean(text);

    /// <summary>The text with each mark turned back into the letter it stands for.</summary>
    public static string Back(string text) => Mark().Replace(text, match =>
        Rune.TryCreate(int.Parse(match.Groups[1].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture), out var rune)
            ? $"{rune}"
            : match.Value);

    [GeneratedRegex("⟨U\\+([0-9A-F]{4,6})⟩")]
    private static partial Regex Mark();
}
