using System.Buffers;
using System.Globalization;
using System.Text;
using Wcwidth;

namespace PanelTui.Presentation;

/// <summary>What a reader takes for one letter: a character with the marks over and under it.</summary>
internal readonly record struct TextElement(string Text)
{
    /// <summary>Three marks carry every living spelling; more is a tower that grows into the lines above.</summary>
    private const int MostMarks = 3;

    /// <summary>The columns it takes; no terminal gives more than two to one letter.</summary>
    public int Columns
    {
        get
        {
            var columns = 0;
            foreach (var rune in Text.EnumerateRunes())
                columns += Math.Max(0, UnicodeCalculator.GetWidth(rune));
            return Math.Min(2, columns);
        }
    }

    /// <summary>Whether each of its characters can be seen, and stands where it was written.</summary>
    public bool IsShowable
    {
        get
        {
            var marks = -1;
            for (var at = 0; at < Text.Length; marks++)
            {
                var (rune, length) = Decode(at);
                if (rune is not { } known || !ShowableRunes.Has(known))
                    return false;
                at += length;
            }

            return marks <= MostMarks && Columns > 0;
        }
    }

    public static IEnumerable<TextElement> Split(string text)
    {
        for (var start = 0; start < text.Length;)
        {
            var length = StringInfo.GetNextTextElementLength(text, start);
            yield return new TextElement(text.Substring(start, length));
            start += length;
        }
    }

    /// <summary>Adds it as it may be shown: whole, or its first character alone, and an escape for each that may not be.</summary>
    public void AppendTo(StringBuilder shown, bool ascii)
    {
        if (IsShowable)
        {
            shown.Append(ascii ? AsciiGlyphs.Of(Text, Columns) : Text);
            return;
        }

        for (var at = 0; at < Text.Length;)
        {
            var (rune, length) = Decode(at);
            var alone = new TextElement(Text.Substring(at, length));
            if (at == 0 && alone.IsShowable)
                alone.AppendTo(shown, ascii);
            else
                AppendEscape(shown, rune?.Value ?? Text[at], ascii);
            at += length;
        }
    }

    private static void AppendEscape(StringBuilder shown, int value, bool ascii) =>
        shown.Append(ascii ? '<' : '⟨').Append("U+")
            .Append(value.ToString("X4", CultureInfo.InvariantCulture)).Append(ascii ? '>' : '⟩');

    /// <summary>The character at a place, and its length; no character where half of a surrogate pair stands alone.</summary>
    private (Rune? Rune, int Length) Decode(int at) =>
        Rune.DecodeFromUtf16(Text.AsSpan(at), out var rune, out var length) == OperationStatus.Done
            ? (rune, length)
            : (null, 1);
}
