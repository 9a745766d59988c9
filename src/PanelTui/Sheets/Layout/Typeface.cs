using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Text;
using PanelTui.Presentation;
using PdfSharp.Drawing;

namespace PanelTui.Sheets.Layout;

/// <summary>The letters that sheets are set in, and how wide texts are in them.</summary>
internal static class Typeface
{
    private const double EmSize = 100;

    private static readonly ConcurrentDictionary<(Rune Rune, bool Bold), double> Advances = [];

    private static readonly Lazy<FrozenSet<Rune>> Known = new(SheetFonts.Characters);

    private static readonly Lock Gate = new();

    private static readonly XGraphics Measuring = MeasuringContext();

    /// <summary>Harmless, and each character that the fonts lack as its code point, `[U+4E2D]`: a box would tell nobody anything.</summary>
    public static string Settable(string text)
    {
        var clean = DisplayText.Clean(text);
        return clean.EnumerateRunes().All(Known.Value.Contains)
            ? clean
            : string.Concat(clean.EnumerateRunes().Select(rune => Known.Value.Contains(rune) ? $"{rune}" : $"[U+{rune.Value:X4}]"));
    }

    /// <summary>In points; the letters are set without kerning, so that the widths add up.</summary>
    public static double Width(string text, double size, bool bold = false)
    {
        var width = 0.0;
        foreach (var rune in text.EnumerateRunes()) width += Advances.GetOrAdd((rune, bold), Measure);
        return width * size / EmSize;
    }

    /// <summary>The text on one line in so much room, harmless, cut with an ellipsis where it is wider.</summary>
    public static string Cut(string text, double room, double size, bool bold = false)
    {
        var clean = Settable(text);
        if (Width(clean, size, bold) <= room) return clean;
        var shown = new StringBuilder();
        foreach (var rune in clean.EnumerateRunes())
        {
            if (Width($"{shown}{rune}…", size, bold) > room) break;
            shown.Append(rune);
        }

        return $"{shown.ToString().TrimEnd()}…";
    }

    /// <summary>Over several lines, broken at blanks; a word that is too long is broken where the line ends.</summary>
    public static IEnumerable<string> Wrap(string text, double room, double size, bool bold = false)
    {
        var line = "";
        foreach (var word in Settable(text).Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, room, size, bold)))
        {
            if (line.Length > 0 && Width($"{line} {word}", size, bold) > room)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return line;
    }

    private static IEnumerable<string> Pieces(string word, double room, double size, bool bold)
    {
        var piece = "";
        foreach (var rune in word.EnumerateRunes())
        {
            if (piece.Length > 0 && Width($"{piece}{rune}", size, bold) > room)
            {
                yield return piece;
                piece = "";
            }

            piece += rune;
        }

        yield return piece;
    }

    private static double Measure((Rune Rune, bool Bold) letter)
    {
        lock (Gate) return Measuring.MeasureString($"{letter.Rune}", SheetFonts.Of(EmSize, letter.Bold)).Width;
    }

    private static XGraphics MeasuringContext()
    {
        SheetFonts.Use();
        return XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
    }
}
