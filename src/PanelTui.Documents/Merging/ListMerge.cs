using System.Collections.Immutable;
using PanelTui.Documents.Comparing;

namespace PanelTui.Documents.Merging;

/// <summary>Merges a list of mappings, such as circuits, each recognised wherever it stands.</summary>
internal sealed class ListMerge(MergeContext context)
{
    /// <summary>Null where the lines cannot be taken apart, or the format does not tell how entries are recognised.</summary>
    public ImmutableArray<Piece>? Merge(string ancestor, string ours, string theirs, MergePlace place)
    {
        if (Identity.For(place.Pattern) is not { } identity) return null;
        if (Chunks.OfList(ancestor) is not { } was || Chunks.OfList(ours) is not { } mine || Chunks.OfList(theirs) is not { } other)
            return null;
        if (was.All.Concat(mine.All).Concat(other.All).Any(chunk => !chunk.Value.IsMapping)) return null;
        var entries = Entries.Of(was, mine, other, identity);
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        foreach (var entry in entries.InOrder()) pieces.AddRange(Entry(entry, place));
        pieces.Add(context.Comments(was.Tail, mine.Tail, other.Tail, place));
        return pieces.DrainToImmutable();
    }

    private ImmutableArray<Piece> Entry(Entry entry, MergePlace list)
    {
        var isCircuit = list.Pattern == "circuits";
        var isHeld = isCircuit && entry.TheirIndex is { } index && context.HeldCircuits.Contains(index);
        var place = list.Entry((entry.Mine ?? entry.Other ?? entry.Was)!.Value, isHeld);
        var pieces = Pieces(entry, place, isHeld);
        if (isCircuit && pieces.Any(piece => Lines.ContentColumn(piece.Of(MergeSide.Ours)) is not null))
            context.Circuits.Add((entry.OurIndex, entry.TheirIndex));
        return pieces;
    }

    private ImmutableArray<Piece> Pieces(Entry entry, MergePlace place, bool isHeld)
    {
        var (was, mine, other) = (entry.Was, entry.Mine, entry.Other);
        if (IsInDoubt(entry, place) && !Likeness.Same(mine?.Value, other?.Value)) return [InDoubt(was, mine, other, place)];
        if (isHeld && mine is null) return [new DisputedPiece(place.Conflict("it was added where there is no room for it", "", "", other!.Text))];
        if (!isHeld && !IsAskedInside(mine, other) && OneSided.Merge(was, mine, other, place) is { } settled)
            return context.Settled(settled, was, mine, other, place);
        if (mine is null || other is null) return [OneSided.Dispute(was, mine, other, place)];
        return [context.Comments(was?.Lead ?? "", mine.Lead, other.Lead, place), .. Own(was, mine, other, place, isHeld)];
    }

    private static bool IsInDoubt(Entry entry, MergePlace place) => entry.IsInDoubt
        || (place.Pattern == "circuits[].loads[]" && entry is { Was: { } was, Mine: { } mine, Other: { } other }
            && Nameplate.IsInDoubt(was.Value, mine.Value, other.Value));

    private bool IsAskedInside(Chunk? mine, Chunk? other) => context.WhyAsked is not null && mine is not null && other is not null;

    private static Piece InDoubt(Chunk? was, Chunk? mine, Chunk? other, MergePlace place) => was is null && mine is not null && other is not null
        ? OneSided.Dispute(was, mine, other, place)
        : new DisputedPiece(place.Conflict(
            $"both sides changed what may be this {place.EntryNoun}, and the file does not tell whether it is",
            was?.Text ?? "", mine?.Text ?? "", other?.Text ?? ""));

    private ImmutableArray<Piece> Own(Chunk? was, Chunk mine, Chunk other, MergePlace place, bool isHeld)
    {
        if (!isHeld && (mine.Own == other.Own || other.Own == was?.Own)) return [new KeptPiece(mine.Own)];
        if (!isHeld && mine.Own == was?.Own && context.WhyAsked is null) return [new KeptPiece(other.Own)];
        return Inner(was, mine, other, place)
            ?? context.Settled(LeafMerge.Of(was, mine, other, place, isHeld: false), was?.Bare, mine.Bare, other.Bare, place);
    }

    private ImmutableArray<Piece>? Inner(Chunk? was, Chunk mine, Chunk other, MergePlace place)
    {
        if (!DashedLines.CanOpen(mine) || !DashedLines.CanOpen(other) || !(was is null || DashedLines.CanOpen(was))) return null;
        var merged = new MappingMerge(context).Merge(
            was is null ? "" : DashedLines.Open(was), DashedLines.Open(mine), DashedLines.Open(other), place);
        return merged is { } pieces ? DashedLines.Close(pieces, mine, place) : null;
    }
}
