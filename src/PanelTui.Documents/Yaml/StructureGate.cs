using System.Collections.Immutable;
using PanelTui.Documents.Text;
using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Checks at every reading that the places found are true: nothing but blanks, comments and directives between the tokens, every
/// child inside its parent, every indicator where it is said to be. A wrong place becomes a refusal, never a wrong edit.
/// </summary>
internal static class StructureGate
{
    public const string Refusal =
        "this is written in a way that the editor cannot follow exactly, so it will not touch it; write it more simply";

    /// <summary>Throws when a place is wrong; otherwise lists the comments of the text.</summary>
    public static ImmutableArray<TextSpan> Check(SourceText source, IReadOnlyList<Token> tokens, YamlNode? root)
    {
        var comments = ImmutableArray.CreateBuilder<TextSpan>();
        var end = 0;
        foreach (var token in tokens)
        {
            var place = TokenPlace.Of(token, source.Text.Length);
            if (place.IsEmpty) continue;
            Demand(place.Start >= end, source, place.Start);
            CheckGap(source, TextSpan.Between(end, place.Start), comments);
            end = place.End;
        }

        CheckGap(source, TextSpan.Between(end, source.Text.Length), comments);
        if (root is not null) CheckNode(source, root, new(0, source.Text.Length));
        return comments.DrainToImmutable();
    }

    private static void CheckGap(SourceText source, TextSpan gap, ImmutableArray<TextSpan>.Builder comments)
    {
        for (var at = NextInk(source, gap.Start, gap.End); at < gap.End; at = NextInk(source, at, gap.End))
        {
            var line = source.LineSpan(source.PositionOf(at).Line);
            var rest = TextSpan.Between(at, Math.Min(gap.End, line.End));
            if (source.Text[at] == '#') comments.Add(rest);
            else Demand(source.Text[at] == '%' && at == line.Start, source, at);
            at = rest.End;
        }
    }

    private static int NextInk(SourceText source, int from, int end)
    {
        var found = source.Text.AsSpan(from, end - from).IndexOfAnyExcept(" \t\r\n");
        return found < 0 ? end : from + found;
    }

    private static void CheckNode(SourceText source, YamlNode node, TextSpan outer)
    {
        var whole = TextSpan.Between(node.Start, node.FullEnd);
        Demand(node.Start <= node.PropsEnd && node.PropsEnd <= node.CoreStart && node.CoreStart <= node.End, source, node.Start);
        Demand(node.End <= node.FullEnd && outer.Contains(whole), source, node.Start);
        if (node.Style == YamlStyle.Flow && !node.IsBarePair) CheckBrackets(source, node);
        var from = node.CoreStart;
        foreach (var pair in node.Pairs) from = CheckPair(source, pair, TextSpan.Between(from, node.FullEnd));
        foreach (var item in node.Items) from = CheckItem(source, item, TextSpan.Between(from, node.FullEnd));
    }

    private static int CheckPair(SourceText source, YamlPair pair, TextSpan outer)
    {
        CheckIndicator(source, pair.QuestionOffset, '?', outer);
        CheckIndicator(source, pair.ColonOffset, ':', outer);
        CheckNode(source, pair.Key, TextSpan.Between(outer.Start, pair.ColonOffset ?? outer.End));
        CheckNode(source, pair.Value, TextSpan.Between(pair.ColonOffset ?? pair.Key.End, outer.End));
        return pair.FullEnd;
    }

    private static int CheckItem(SourceText source, YamlItem item, TextSpan outer)
    {
        CheckIndicator(source, item.DashOffset, '-', outer);
        CheckNode(source, item.Value, TextSpan.Between(item.DashOffset ?? outer.Start, outer.End));
        return item.Value.FullEnd;
    }

    private static void CheckBrackets(SourceText source, YamlNode node)
    {
        var (open, close) = node.IsMapping ? ('{', '}') : ('[', ']');
        Demand(source.Text[node.CoreStart] == open && source.Text[node.End - 1] == close, source, node.CoreStart);
    }

    private static void CheckIndicator(SourceText source, int? offset, char indicator, TextSpan outer) =>
        Demand(offset is not { } at || (at >= outer.Start && at < outer.End && source.Text[at] == indicator), source, offset ?? 0);

    private static void Demand(bool holds, SourceText source, int offset)
    {
        if (!holds) throw YamlProblem.At(source, offset, Refusal);
    }
}
