using PanelTui.Documents.Text;
using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Yaml;

/// <summary>Finds the tab that indents a line, which the library reports without a usable place.</summary>
internal static class IndentingTab
{
    private const string TheirWord = "tab";

    public static int? Find(SourceText source, List<Token> tokens, Exception error)
    {
        if (!error.Message.Contains(TheirWord, StringComparison.Ordinal)) return null;
        var first = source.PositionOf(tokens.Count == 0 ? 0 : (int)tokens[^1].Start.Index).Line;
        for (var line = first; line <= source.LineCount; line++)
        {
            var text = source.Text.AsSpan(source.LineSpan(line).Start, source.LineSpan(line).Length);
            var indent = text[..^text.TrimStart().Length];
            if (indent.Length < text.Length && indent.IndexOf('\t') is var tab and >= 0) return source.LineSpan(line).Start + tab;
        }

        return null;
    }
}
