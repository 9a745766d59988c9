using System.Collections.Immutable;
using PanelTui.Documents.Comparing;

namespace PanelTui.Documents.Merging;

/// <summary>Entries that a side lacks, or that only one side touched: nothing to ask about in most cases.</summary>
internal static class OneSided
{
    /// <summary>Null where both sides have a say.</summary>
    public static ImmutableArray<Piece>? Merge(Chunk? was, Chunk? mine, Chunk? other, MergePlace place) => (was, mine, other) switch
    {
        (_, null, null) => [],
        (null, { } added, null) => [new KeptPiece(added.Text)],
        (null, null, { } added) => [new KeptPiece(added.Text)],
        ({ } old, { } kept, null) => IsAsItWas(old, kept) ? [] : [Dispute(was, mine, other, place)],
        ({ } old, null, { } kept) => IsAsItWas(old, kept) ? [] : [Dispute(was, mine, other, place)],
        (_, { } one, { } two) when one.Text == two.Text || two.Text == was?.Text => [new KeptPiece(one.Text)],
        (_, { } one, { } two) when one.Text == was?.Text => [new KeptPiece(two.Text)],
        _ => null,
    };

    /// <summary>What one side removed goes only where the other neither changed it nor wrote a comment on it.</summary>
    public static bool IsAsItWas(Chunk old, Chunk kept) =>
        Likeness.Same(old.Value, kept.Value) && !CommentMerge.HasNew(old.Text, kept.Text);

    /// <summary>Whether the value that would be taken without asking is the other side's.</summary>
    public static bool IsTheirs(Chunk? was, Chunk? mine, Chunk? other) =>
        !Likeness.Same(mine?.Value, other?.Value) && !Likeness.Same(was?.Value, other?.Value);

    public static Piece Dispute(Chunk? was, Chunk? mine, Chunk? other, MergePlace place)
    {
        var label = place.Label;
        var what = (mine, other) switch
        {
            (null, _) => $"{label} was removed on our side and changed on the other",
            (_, null) => $"{label} was changed on our side and removed on the other",
            _ when place.HoldsPlace && IsTheirs(was, mine, other) && Likeness.Same(was?.Value, mine?.Value) =>
                $"{label} was changed on the other side to where there is no room for it",
            _ when was is null => $"{label} was added on both sides, in two ways",
            _ => $"{label} was changed on both sides, in two ways",
        };
        return new DisputedPiece(place.Conflict(what, was?.Text ?? "", mine?.Text ?? "", other?.Text ?? ""));
    }
}
