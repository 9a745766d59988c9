using System.Collections.Immutable;

namespace PanelTui.Documents.Merging;

/// <summary>What a merge is told beforehand, and what it notes on the way.</summary>
/// <param name="HeldCircuits">The other side's circuits, by their place in its file, whose space and poles collide.</param>
/// <param name="WhyAsked">Why everything that the other side changed is to be asked for; null where only doubts are.</param>
internal sealed record MergeContext(ImmutableHashSet<int> HeldCircuits, string? WhyAsked = null)
{
    /// <summary>The merged circuits in their order: their places in our file and in the other side's.</summary>
    public List<(int? Ours, int? Theirs)> Circuits { get; } = [];

    /// <summary>The pieces of one entry, or a question where everything is asked for and they are not what our side has.</summary>
    public ImmutableArray<Piece> Settled(ImmutableArray<Piece> pieces, Chunk? was, Chunk? mine, Chunk? other, MergePlace place)
    {
        if (WhyAsked is null || pieces.Any(piece => piece is DisputedPiece)) return pieces;
        var merged = string.Concat(pieces.Select(piece => piece.Of(MergeSide.Ours)));
        if (merged == (mine?.Text ?? "")) return pieces;
        var what = (mine, other) switch
        {
            (null, _) => "was added on the other side",
            (_, null) => "was removed on the other side",
            _ => "was changed on the other side",
        };
        return [new DisputedPiece(place.Conflict($"{place.Label} {what}, and {WhyAsked}", was?.Text ?? "", mine?.Text ?? "", merged))];
    }

    /// <summary>The comments above an entry or below the last one; a question where everything is asked for and they are not ours.</summary>
    public Piece Comments(string was, string mine, string other, MergePlace place)
    {
        var merged = CommentMerge.OfLines(was, mine, other);
        return WhyAsked is null || merged == mine
            ? new KeptPiece(merged)
            : new DisputedPiece(place.Conflict($"comments were changed on the other side, and {WhyAsked}", was, mine, merged));
    }
}
