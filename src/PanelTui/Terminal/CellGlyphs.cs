using PanelTui.Presentation;

namespace PanelTui.Terminal;

/// <summary>The last door before the terminal: what a cell may print, and the columns it takes.</summary>
internal sealed class CellGlyphs(bool ascii)
{
    private const string Refused = "?";
    private const string Arrow = "→";

    /// <param name="grapheme">The content of the cell.</param>
    /// <param name="room">The columns left in the row.</param>
    /// <param name="next">The content of the cell after it: the shaft of an arrow to the right takes the blank before its head.</param>
    public (string Glyph, int Width) For(string? grapheme, int room, string? next = null)
    {
        if (ascii && next == Arrow && string.IsNullOrWhiteSpace(grapheme))
            return ("-", 1);
        if (string.IsNullOrEmpty(grapheme))
            return (" ", 1);
        if (grapheme.Length == 1 && grapheme[0] is >= ' ' and <= '~')
            return (grapheme, 1);
        if (!DisplayText.IsShowable(grapheme))
            return (Refused, 1);
        var width = Math.Clamp(DisplayText.Width(grapheme), 1, 2);
        if (width > room)
            return (Refused, 1);
        return (ascii ? AsciiGlyphs.Of(grapheme, width) : grapheme, width);
    }
}
