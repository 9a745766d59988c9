namespace PanelTui.Presentation;

/// <summary>An ASCII stand-in for each glyph, column for column, so that nothing moves when the screen is plain.</summary>
public static class AsciiGlyphs
{
    private static readonly (string Glyphs, char Plain)[] StandIns =
    [
        ("─━┄┅┈┉╌╍═╴╶╸╺╼╾–—−‑", '-'), ("│┃┆┇┊┋╎╏║╵╷╹╻╽╿▌▐", '|'), ("█▓▒░■▀▄", '#'), ("□◇○☐", 'o'),
        ("☑◉●✓✔", 'x'), ("✗✘", 'X'), ("◆•★", '*'), ("·∙", '.'), ("…≈", '~'), ("▼↓▾", 'v'), ("▲↑▴", '^'),
        ("►→▶▸⟩»›", '>'), ("◄←◀◂⟨«‹", '<'), ("⟦", '['), ("⟧", ']'), ("×", 'x'), ("÷", '/'), ("±", '+'),
        ("‘’′", '\''), ("“”„″", '"'), ("≠", '!'), ("≥", '>'), ("≤", '<'), ("²", '2'), ("³", '3'), ("°", 'o'),
        ("Ω", 'O'), ("Δ", 'D'), ("µμ", 'u'), ("φ", 'o'), ("\u00a0\u202f", ' '),
        ("ÀÁÂÃÄÅĀĂĄ", 'A'), ("ÇĆČ", 'C'), ("ÈÉÊËĒĖĘĚ", 'E'), ("ÌÍÎÏ", 'I'), ("ÑŃŇ", 'N'), ("ÒÓÔÕÖØŐ", 'O'),
        ("ŚŠ", 'S'), ("ÙÚÛÜŰ", 'U'), ("Ý", 'Y'), ("ŹŻŽ", 'Z'), ("Ł", 'L'),
        ("àáâãäåāăą", 'a'), ("çćč", 'c'), ("èéêëēėęě", 'e'), ("ìíîï", 'i'), ("ñńň", 'n'), ("òóôõöøő", 'o'),
        ("śšß", 's'), ("ùúûüű", 'u'), ("ýÿ", 'y'), ("źżž", 'z'), ("ł", 'l'),
    ];

    private static readonly Dictionary<char, string> Known = StandIns
        .SelectMany(standIn => standIn.Glyphs.Where(glyph => glyph > '~').Select(glyph => (glyph, standIn.Plain)))
        .ToDictionary(pair => pair.glyph, pair => pair.Plain.ToString());

    /// <param name="element">One letter with its marks.</param>
    /// <param name="columns">The columns it takes, one or two.</param>
    public static string Of(string element, int columns)
    {
        ArgumentException.ThrowIfNullOrEmpty(element);
        if (columns > 1)
            return "??";
        return element[0] switch
        {
            <= '~' => element[..1],
            var glyph when Known.TryGetValue(glyph, out var plain) => plain,
            >= '\u2500' and <= '\u257f' => "+", // wherever lines of a frame meet or turn
            _ => "?",
        };
    }
}
