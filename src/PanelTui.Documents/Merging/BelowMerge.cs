using System.Collections.Immutable;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Merges what stands on the lines below a key: the key's line by itself, then the mapping or list.</summary>
internal static class BelowMerge
{
    /// <summary>Null where a side has no such lines, or they cannot be taken apart.</summary>
    public static ImmutableArray<Piece>? Of(MergeContext context, Chunk? was, Chunk mine, Chunk other, MergePlace place)
    {
        if (KindOf(was, mine, other) is not { } kind) return null;
        var (wasHead, wasBody) = was is null ? ("", "") : Parts(was);
        var (head, body) = Parts(mine);
        var (otherHead, otherBody) = Parts(other);
        var merged = kind == YamlKind.Mapping
            ? new MappingMerge(context).Merge(Flush(wasBody), Flush(body), Flush(otherBody), place)
            : new ListMerge(context).Merge(Flush(wasBody), Flush(body), Flush(otherBody), place);
        if (merged is not { } pieces) return null;
        var column = Lines.ContentColumn(body) ?? Lines.ContentColumn(otherBody) ?? 0;
        var key = wasHead.Length == 0 ? head : HeadOf(wasHead, head, otherHead);
        if (kind == YamlKind.Sequence && pieces.All(IsWithoutContent)) key = key.Insert(Colon(key), " []");
        return [new KeptPiece(key), .. pieces.Select(piece => piece.Select(text => Lines.IndentBy(text, column)))];
    }

    // A list that one side emptied is still merged circuit by circuit with that of the other.
    private static YamlKind? KindOf(Chunk? was, Chunk mine, Chunk other)
    {
        var below = new[] { mine, other }.Where(IsBelow).Select(chunk => chunk.Value.Kind).Distinct().ToList();
        if (below is not [var kind]) return null;
        var isList = kind == YamlKind.Sequence;
        return May(mine, isList) && May(other, isList) && (was is null || May(was, mayBeEmpty: true)) ? kind : null;
    }

    private static bool May(Chunk chunk, bool mayBeEmpty) => IsBelow(chunk) || (mayBeEmpty && IsEmpty(chunk));

    private static bool IsWithoutContent(Piece piece) => piece is KeptPiece kept && Lines.ContentColumn(kept.Text) is null;

    private static bool IsBelow(Chunk chunk) =>
        chunk.Value is { Style: YamlStyle.Block, Anchor: null, Tag: null } && chunk.Value.Kind is YamlKind.Mapping or YamlKind.Sequence
        && !chunk.Value.Parent!.IsSequence;

    private static bool IsEmpty(Chunk chunk) =>
        chunk.Value is { Anchor: null, Tag: null } && Comparing.Likeness.IsNothing(chunk.Value) && Lines.Of(chunk.Own).Count() == 1;

    private static (string Head, string Body) Parts(Chunk chunk)
    {
        if (!IsBelow(chunk)) return (WithoutValue(chunk), "");
        var end = chunk.Own.IndexOf('\n', StringComparison.Ordinal) + 1;
        return (chunk.Own[..end], chunk.Own[end..]);
    }

    private static string WithoutValue(Chunk chunk) =>
        chunk.Own[..(chunk.Value.CoreStart - chunk.Start)].TrimEnd(' ') + chunk.Own[(chunk.Value.End - chunk.Start)..];

    private static string HeadOf(string was, string mine, string other)
    {
        if (mine == other || other == was) return mine;
        return mine == was ? other : mine[..Colon(mine)] + CommentMerge.OfEnd(was[Colon(was)..], mine[Colon(mine)..], other[Colon(other)..]);
    }

    private static int Colon(string head) => head.IndexOf(':', StringComparison.Ordinal) + 1;

    private static string Flush(string body) => Lines.Outdent(body, Lines.ContentColumn(body) ?? 0);
}
