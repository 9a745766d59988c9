using System.Collections.Immutable;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Merges an entry whose value is one value or stands in brackets: the value by what it says, the comment after it by its text.</summary>
internal static class LeafMerge
{
    public static ImmutableArray<Piece> Of(Chunk? was, Chunk mine, Chunk other, MergePlace place, bool isHeld)
    {
        if (!isHeld && OneLiner(was, mine, other, place) is { } merged) return [merged];
        if (!isHeld && was is not null)
        {
            if (Likeness.Same(mine.Value, was.Value)) return [new KeptPiece(other.Own)];
            if (Likeness.Same(other.Value, was.Value)) return [new KeptPiece(mine.Own)];
        }

        if (Likeness.Same(mine.Value, other.Value)) return [new KeptPiece(mine.Own)];
        return [OneSided.Dispute(was?.Bare, mine.Bare, other.Bare, place)];
    }

    // Null where a value has lines of its own.
    private static Piece? OneLiner(Chunk? was, Chunk mine, Chunk other, MergePlace place)
    {
        if (!IsSimple(mine) || !IsSimple(other) || !(was is null || IsSimple(was))) return null;
        var (head, value, end) = Parts(mine);
        var (_, otherValue, otherEnd) = Parts(other);
        var wasEnd = was is null ? end : Parts(was).End;
        var comment = CommentMerge.OfEnd(wasEnd, end, otherEnd);
        var (ours, theirs) = ValueMerge.Of(was?.Value, mine.Value, other.Value, place, value, otherValue);
        if (ours == theirs) return new KeptPiece(Joined(head, ours, comment));
        return OneSided.Dispute(
            was?.Bare,
            mine with { Lead = "", Own = Joined(head, ours, comment) },
            other with { Lead = "", Own = Joined(head, theirs, comment) },
            place);
    }

    private static bool IsSimple(Chunk chunk) =>
        chunk.Value.Kind != YamlKind.Alias && chunk.Value.Style is not (YamlStyle.Block or YamlStyle.Literal or YamlStyle.Folded)
        && chunk.Value.Anchor is null && chunk.Value.Tag is null;

    private static (string Head, string Value, string End) Parts(Chunk chunk)
    {
        var (from, to) = (chunk.Value.CoreStart - chunk.Start, chunk.Value.End - chunk.Start);
        return (chunk.Own[..from], chunk.Own[from..to], chunk.Own[to..]);
    }

    private static string Joined(string head, string value, string end) =>
        value.Length > 0 && head[^1] is ':' or '-' ? $"{head} {value}{end}" : head + value + end;
}
