using System.Collections.Immutable;

namespace PanelTui.Documents.Merging;

/// <summary>Merges the entries of a mapping by their keys: in our order, what the other side added after its predecessor.</summary>
internal sealed class MappingMerge(MergeContext context)
{
    /// <summary>Null where the lines cannot be taken apart, on any side.</summary>
    public ImmutableArray<Piece>? Merge(string ancestor, string ours, string theirs, MergePlace place)
    {
        if (Chunks.OfMapping(ancestor) is not { } was || Chunks.OfMapping(ours) is not { } mine || Chunks.OfMapping(theirs) is not { } other)
            return null;
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        foreach (var key in Order(mine, other))
            pieces.AddRange(Entry(was.Find(key), mine.Find(key), other.Find(key), place.Key(key), place.IsHeld(key)));
        pieces.Add(context.Comments(was.Tail, mine.Tail, other.Tail, place));
        return pieces.DrainToImmutable();
    }

    private static ImmutableArray<string> Order(Chunks ours, Chunks theirs) =>
        ItemOrder.WithAdded([.. ours.All.Select(chunk => chunk.Key)], [.. theirs.All.Select(chunk => chunk.Key)]);

    private ImmutableArray<Piece> Entry(Chunk? was, Chunk? mine, Chunk? other, MergePlace place, bool isHeld)
    {
        if (context.WhyAsked is not null && Inside(was, mine, other, place) is { } inside) return inside;
        if (OneSided.Merge(was, mine, other, place) is { } settled && !(isHeld && OneSided.IsTheirs(was, mine, other)))
            return context.Settled(settled, was, mine, other, place);
        if (mine is null || other is null) return [OneSided.Dispute(was, mine, other, place)];
        return
        [
            Lead(was, mine, other, place),
            .. context.Settled(Own(was, mine, other, place, isHeld), was?.Bare, mine.Bare, other.Bare, place),
        ];
    }

    // Where everything is asked for, each entry by itself rather than the list of all.
    private ImmutableArray<Piece>? Inside(Chunk? was, Chunk? mine, Chunk? other, MergePlace place) =>
        mine is null || other is null || mine.Own == other.Own || BelowMerge.Of(context, was, mine, other, place) is not { } below
            ? null
            : [Lead(was, mine, other, place), .. below];

    private Piece Lead(Chunk? was, Chunk mine, Chunk other, MergePlace place) =>
        context.Comments(was?.Lead ?? "", mine.Lead, other.Lead, place);

    private ImmutableArray<Piece> Own(Chunk? was, Chunk mine, Chunk other, MergePlace place, bool isHeld)
    {
        if (!isHeld)
        {
            if (mine.Own == other.Own || other.Own == was?.Own) return [new KeptPiece(mine.Own)];
            if (mine.Own == was?.Own) return [new KeptPiece(other.Own)];
            if (BelowMerge.Of(context, was, mine, other, place) is { } below) return below;
        }

        return LeafMerge.Of(was, mine, other, place, isHeld);
    }
}
