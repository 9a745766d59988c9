using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// The parts of a scalar after <c>|</c> or <c>&gt;</c>: where its indicators end, where its body ends, and how far it
/// is indented.
/// </summary>
/// <param name="HeaderEnd">Just after the indicators, before any comment on their line.</param>
/// <param name="End">Just after the last character of the body: blank lines below are not part of it.</param>
/// <param name="BodyIndent">Spaces before each line of the body.</param>
/// <param name="Keeps">Whether <c>+</c> makes the blank lines below part of the value.</param>
internal readonly record struct BlockScalarShape(int HeaderEnd, int End, int BodyIndent, bool Keeps)
{
    public bool HasBody => End > HeaderEnd;

    /// <param name="source">The text.</param>
    /// <param name="loose">From the indicator to where the library says the scalar ends, blank lines included.</param>
    /// <param name="parentColumn">The column, from 0, that an indentation indicator counts from.</param>
    public static BlockScalarShape Of(SourceText source, TextSpan loose, int parentColumn)
    {
        var header = HeaderEndOf(source.Text, loose.Start);
        var indicators = source.Text[loose.Start..header];
        var body = BodyLines(source, loose);
        var indent = indicators.FirstOrDefault(char.IsAsciiDigit) is var digit and not '\0'
            ? parentColumn + (digit - '0')
            : IndentOf(source, body);
        var last = body.LastOrDefault(line => !IsBlank(source, line, indent));
        return new(header, last.End == 0 ? header : last.End, indent, indicators.Contains('+', StringComparison.Ordinal));
    }

    private static int HeaderEndOf(string text, int start)
    {
        var end = start + 1;
        while (end < text.Length && (text[end] is '+' or '-' || char.IsAsciiDigit(text[end]))) end++;
        return end;
    }

    private static List<TextSpan> BodyLines(SourceText source, TextSpan loose)
    {
        var first = source.PositionOf(loose.Start).Line + 1;
        return [.. Enumerable.Range(first, Math.Max(0, source.LineCount - first + 1)).Select(source.LineSpan)
            .TakeWhile(line => line.Start < loose.End)];
    }

    private static int IndentOf(SourceText source, List<TextSpan> body) =>
        body.Select(source.Slice).FirstOrDefault(line => line.AsSpan().ContainsAnyExcept(' ')) is { } line
            ? line.Length - line.TrimStart(' ').Length
            : int.MaxValue;

    private static bool IsBlank(SourceText source, TextSpan line, int indent) =>
        line.Length <= indent && !source.Text.AsSpan(line.Start, line.Length).ContainsAnyExcept(' ');
}
