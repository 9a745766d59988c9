using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace PanelTui.Documents.Text;

/// <summary>Where the lines of a text start and how they end: LF, CRLF or CR, mixed as they may be.</summary>
internal sealed class LineMap
{
    private readonly string _text;
    private readonly ImmutableArray<int> _starts;

    public LineMap(string text)
    {
        _text = text;
        _starts = StartsOf(text);
    }

    /// <summary>How many lines there are; a break at the very end opens one more, empty line.</summary>
    public int Count => _starts.Length;

    public LinePosition PositionOf(int offset)
    {
        var line = LineOf(offset);
        return new(line, offset - _starts[line - 1] + 1);
    }

    /// <summary>The number, from 1, of the line that holds the offset; a line's break belongs to that line.</summary>
    public int LineOf(int offset)
    {
        var found = _starts.BinarySearch(offset);
        return found >= 0 ? found + 1 : ~found;
    }

    public int StartOf(int line) => _starts[line - 1];

    /// <summary>Where the next line starts: the end of this one with its break.</summary>
    public int NextStartOf(int line) => line < Count ? _starts[line] : _text.Length;

    /// <summary>The line without its break.</summary>
    public TextSpan SpanOf(int line) => TextSpan.Between(StartOf(line), NextStartOf(line) - BreakOf(line).Length);

    /// <summary>The break that ends the line, or nothing for the last line.</summary>
    public string BreakOf(int line)
    {
        if (line >= Count) return "";
        var end = _starts[line];
        if (_text[end - 1] == '\r') return "\r";
        return end - 2 >= StartOf(line) && _text[end - 2] == '\r' ? "\r\n" : "\n";
    }

    // Counted first, so that the array has its size from the start: a file of blank lines has millions.
    private static ImmutableArray<int> StartsOf(string text)
    {
        var starts = new int[text.AsSpan().Count('\n') + text.AsSpan().Count('\r') - text.AsSpan().Count("\r\n") + 1];
        var line = 1;
        for (var at = NextBreak(text, -1); at >= 0; at = NextBreak(text, at))
        {
            if (text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n') at++;
            starts[line++] = at + 1;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(starts);
    }

    private static int NextBreak(string text, int after)
    {
        var found = text.AsSpan(after + 1).IndexOfAny('\r', '\n');
        return found < 0 ? -1 : after + 1 + found;
    }
}
