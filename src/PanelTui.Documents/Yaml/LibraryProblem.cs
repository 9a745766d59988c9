using PanelTui.Documents.Text;
using YamlDotNet.Core;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Turns the YAML library's errors into sentences for someone who writes a schedule, at the place to look at.
/// </summary>
internal static class LibraryProblem
{
    public static YamlProblem Translate(SourceText source, RecordingScanner scanner, Exception error)
    {
        var offset = OffsetOf(source, scanner, error);
        return AnchorInBraces.Find(source, scanner.Tokens, error)
            ?? UnclosedBracket(source, scanner, offset, error)
            ?? MissingColon.Find(source, offset, error)
            ?? YamlProblem.At(source, offset, LibrarySentences.For(error.Message), error);
    }

    private static int OffsetOf(SourceText source, RecordingScanner scanner, Exception error)
    {
        var reached = scanner.CurrentPosition;
        if (IndentingTab.Find(source, scanner.Tokens, error) is { } tab) return tab;
        if (error is not YamlException yaml) return (int)Math.Min(reached.Index, source.Text.Length);
        var mark = LibrarySentences.PointsToEnd(error.Message) ? yaml.End : yaml.Start;
        return (int)Math.Min(mark.Line > 0 ? mark.Index : reached.Index, source.Text.Length);
    }

    private static YamlProblem? UnclosedBracket(SourceText source, RecordingScanner scanner, int offset, Exception error)
    {
        var reached = (int)Math.Clamp(scanner.CurrentPosition.Index, offset, source.Text.Length);
        if (OpenBrackets.Innermost(source.Text, scanner.Tokens, reached) is not { } from) return null;
        var closing = source.Text[from] == '{' ? '}' : ']';
        var line = source.PositionOf(from).Line;
        if (source.Text.AsSpan(from, source.LineSpan(line).End - from).Contains(closing)) return null;
        var end = source.PositionOf(offset).Line;
        var isLast = source.Text.AsSpan(offset).IsWhiteSpace();
        var how = isLast ? "never closed" : end > line ? $"not closed before line {end}" : "not closed on its line";
        return YamlProblem.At(source, from, $"the '{source.Text[from]}' here is {how}", error);
    }
}
