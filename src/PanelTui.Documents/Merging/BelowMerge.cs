using System.Collections.Immutable;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Merges what stands on the lines below a key: the key's line by itself, then the mapping or list.</summary>
internal static class BelowMerge
{
    /// <summary>Null where a side has no such lines, or they cannot be taken apart.</summary>
    public static ImmutableArray<Piece>? Of(MergeContext context, Chunk? was, Chunk mine, Chunk other, MergePlace place)
    {
        if (!IsBelow(mine) || !IsBelow(other) || !(was is null || IsBelow(was) || Comparing.Likeness.IsNothing(was.Value))) return null;
        if (mine.Value.Kind != other.Value.Kind) return null;
        var (wasHead, wasBody) = was is null || !IsBelow(was) ? ("", "") : Parts(was);
        var (head, body) = Parts(mine);
        var (otherHead, otherBody) = Parts(other);
        var merged = mine.Value.IsMapping
            ? new MappingMerge(context).Merge(Flush(wasBody), Flush(body), Flush(otherBody), place)
            : new ListMerge(context).Merge(Flush(wasBody), Flush(body), Flush(otherBody), place);
        if (merged is not { } pieces) return null;
        var column = Lines.ContentColumn(body) ?? 0;
        var key = wasHead.Length == 0 ? head : HeadOf(wasHead, head, otherHead);
        return [new KeptPiece(key), .. pieces.Select(piece => piece.Select(text => Lines.IndentBy(text, column)))];
    }

    private static bool IsBelow(Chunk chunk) =>
        chunk.Value is { Style: YamlStyle.Block, Anchor: null, Tag: null } && chunk.Value.Kind is YamlKind.Mapping or YamlKind.Sequence
        && !chunk.Value.Parent!.IsSequence;

    private static (string Head, string Body) Parts(Chunk chunk)
    {
        var end = chunk.Own.IndexOf('\n', StringComparison.Ordinal) + 1;
        return (chunk.Own[..end], chunk.Own[end..]);
    }

    private static string HeadOf(string was, string mine, string other)
    {
        if (mine == other || other == was) return mine;
        return mine == was ? other : mine[..Colon(mine)] + CommentMerge.OfEnd(was[Colon(was)..], mine[Colon(mine)..], other[Colon(other)..]);
    }

    private static int Colon(string head) => head.IndexOf(':', StringComparison.Ordinal) + 1;

    private static string Flush(string body) => Lines.Outdent(body, Lines.ContentColumn(body) ?? 0);
}
