using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Yaml;

/// <summary>Where the brackets stand that a text has opened and not closed yet, the innermost on top.</summary>
internal static class OpenBrackets
{
    /// <param name="text">The whole text.</param>
    /// <param name="tokens">What the scanner has handed out.</param>
    /// <param name="reached">Where it stopped: it may have read ahead of what it handed out.</param>
    public static int? Innermost(string text, List<Token> tokens, int reached)
    {
        var open = new Stack<int>();
        foreach (var token in tokens)
        {
            if (token is FlowMappingStart or FlowSequenceStart) open.Push((int)token.Start.Index);
            else if (token is FlowMappingEnd or FlowSequenceEnd) open.TryPop(out _);
        }

        ReadAhead(text, tokens.Count == 0 ? 0 : (int)tokens[^1].End.Index, reached, open);
        return open.TryPeek(out var innermost) ? innermost : null;
    }

    /// <summary>A bracket in quotes or in a comment is none.</summary>
    private static void ReadAhead(string text, int from, int to, Stack<int> open)
    {
        for (var at = from; at < to; at++)
        {
            at = text[at] switch
            {
                '"' or '\'' => text.IndexOf(text[at], at + 1) is var end and >= 0 ? end : to,
                '#' when at > 0 && char.IsWhiteSpace(text[at - 1]) => text.IndexOf('\n', at) is var end and >= 0 ? end : to,
                _ => at,
            };
            if (at >= to) return;
            if (text[at] is '[' or '{') open.Push(at);
            else if (text[at] is ']' or '}') open.TryPop(out _);
        }
    }
}
