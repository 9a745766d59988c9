using PanelTui.Documents.Text;

namespace PanelTui.Documents.Writing;

/// <summary>Questions about the lines of a text, by offset or by number from 1.</summary>
internal static class SourceLines
{
    public static int LineOf(this SourceText source, int offset) => source.Lines.LineOf(offset);

    /// <summary>The line that holds the last character before the offset.</summary>
    public static int LineBefore(this SourceText source, int end) => source.Lines.LineOf(Math.Max(0, end - 1));

    /// <summary>The column from 0.</summary>
    public static int ColumnOf(this SourceText source, int offset) =>
        offset - source.Lines.StartOf(source.Lines.LineOf(offset));

    /// <summary>Where the line's characters end, before its break.</summary>
    public static int EndOfLine(this SourceText source, int line) => source.LineSpan(line).End;

    /// <summary>The lines with their breaks.</summary>
    public static TextSpan WholeLines(this SourceText source, int first, int last) =>
        TextSpan.Between(source.Lines.StartOf(first), source.Lines.NextStartOf(last));

    /// <summary>The break to use beside this line: its own, or that of the line above, or the text's.</summary>
    public static string BreakNear(this SourceText source, int line)
    {
        if (source.Lines.BreakOf(line) is { Length: > 0 } own) return own;
        return line > 1 ? source.Lines.BreakOf(line - 1) : source.NewLine;
    }

    public static bool IsBlankLine(this SourceText source, int line) =>
        line >= 1 && line <= source.LineCount && source.LineText(line).IsWhiteSpace();

    public static bool IsCommentLine(this SourceText source, int line) =>
        line >= 1 && line <= source.LineCount && source.LineText(line).TrimStart(" \t").StartsWith("#");

    /// <summary>Whether only blanks stand before the offset on its line.</summary>
    public static bool StartsItsLine(this SourceText source, int offset) =>
        source.Text.AsSpan(0, offset)[source.Lines.StartOf(source.LineOf(offset))..].IsWhiteSpace();

    /// <summary>Whether only blanks, or blanks and a comment, stand from the offset to the end of its line.</summary>
    public static bool EndsItsLine(this SourceText source, int offset) =>
        source.Text.AsSpan(offset, source.EndOfLine(source.LineOf(offset)) - offset).TrimStart(" \t") is var rest
        && (rest.IsEmpty || rest[0] == '#');

    /// <summary>Where the blanks start that stand right before the offset.</summary>
    public static int BlanksBefore(this SourceText source, int offset)
    {
        while (offset > 0 && source.Text[offset - 1] is ' ' or '\t') offset--;
        return offset;
    }

    /// <summary>
    /// Where the blanks end that stand right after the offset; a text with a final break has a character there.
    /// </summary>
    public static int AfterBlanks(this SourceText source, int offset)
    {
        while (source.Text[offset] is ' ' or '\t') offset++;
        return offset;
    }

    private static ReadOnlySpan<char> LineText(this SourceText source, int line) =>
        source.Text.AsSpan(source.LineSpan(line).Start, source.LineSpan(line).Length);
}
