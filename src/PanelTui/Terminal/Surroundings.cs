using System.Globalization;

namespace PanelTui.Terminal;

/// <summary>What the environment tells of the terminal, so that the terminal itself need never be asked.</summary>
internal static class Surroundings
{
    public const string EscapeVariable = "PANELTUI_ESCAPE";
    private const int LongestEscape = 5000;
    private static readonly TimeSpan EscapeNearby = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan EscapeOverALine = TimeSpan.FromMilliseconds(150);

    /// <summary>The colours to send; NO_COLOR with any text in it means none (no-color.org).</summary>
    /// <remarks>
    /// SSH passes TERM and hardly ever COLORTERM. TERM=screen says nothing of 256 colours, and drops what it does not know.
    /// </remarks>
    public static ColourDepth Colours(Func<string, string?> variable) =>
        (Given(variable, "NO_COLOR"), Given(variable, "TERM") ?? "", Given(variable, "COLORTERM")) switch
        {
            (not null, _, _) => ColourDepth.None,
            (_, "" or "dumb" or "unknown", _) => ColourDepth.None,
            (_, var term, _) when term.StartsWith("vt", StringComparison.Ordinal) || IsMono(term) => ColourDepth.None,
            (_, _, "truecolor" or "24bit") => ColourDepth.Full,
            (_, var term, _) when term.EndsWith("-direct", StringComparison.Ordinal) => ColourDepth.Full,
            (_, var term, _) when term.Contains("256color", StringComparison.Ordinal) => ColourDepth.Cube,
            (_, "linux" or "ansi" or "cygwin" or "pcansi" or "screen" or "xterm-16color", _) => ColourDepth.Sixteen,
            _ => ColourDepth.Cube,
        };

    /// <summary>Whether the locale knows ASCII alone: the first of the three variables that is set decides, as in C.</summary>
    public static bool IsAscii(Func<string, string?> variable)
    {
        var locale = Given(variable, "LC_ALL") ?? Given(variable, "LC_CTYPE") ?? Given(variable, "LANG") ?? "";
        return !locale.Replace("-", "", StringComparison.Ordinal).Contains("utf8", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>How long a lone Escape waits for the rest of a key: a slow line may cut a key in two. PANELTUI_ESCAPE says it in milliseconds.</summary>
    public static TimeSpan EscapePatience(Func<string, string?> variable) =>
        int.TryParse(Given(variable, EscapeVariable), NumberStyles.None, CultureInfo.InvariantCulture, out var wished) && wished is > 0 and <= LongestEscape
            ? TimeSpan.FromMilliseconds(wished)
            : Given(variable, "SSH_CONNECTION") is null ? EscapeNearby : EscapeOverALine;

    private static bool IsMono(string term) => term.EndsWith("-m", StringComparison.Ordinal)
        || term.EndsWith("-mono", StringComparison.Ordinal);

    private static string? Given(Func<string, string?> variable, string name) =>
        variable(name) is { Length: > 0 } value ? value : null;
}
