using System.Collections.Immutable;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>The lines of a list's entry without their dash, so that they are those of a mapping, and back.</summary>
internal static class DashedLines
{
    /// <summary>Whether the entry is a mapping by indentation that starts right after its dash.</summary>
    public static bool CanOpen(Chunk entry) =>
        entry.Value is { IsMapping: true, Style: YamlStyle.Block, Anchor: null, Tag: null }
        && entry.Own.StartsWith("- ", StringComparison.Ordinal)
        && entry.Own[1..].TrimStart(' ') is not (['\n', ..] or ['#', ..]);

    public static string Open(Chunk entry) => Lines.Outdent(" " + entry.Own[1..], Column(entry));

    public static ImmutableArray<Piece> Close(ImmutableArray<Piece> pieces, Chunk like, MergePlace place)
    {
        var column = Column(like);
        ImmutableArray<Piece> indented = [.. pieces.Select(piece => piece.Select(text => Lines.IndentBy(text, column)))];
        var first = indented.FirstOrDefault(piece => HasContent(piece, MergeSide.Ours) || HasContent(piece, MergeSide.Theirs));
        if (first is null) return indented;
        if (HasContent(first, MergeSide.Ours) && HasContent(first, MergeSide.Theirs))
            return indented.Replace(first, first.Select(WithDash));
        return [Whole(indented, place)];
    }

    // The first key is there on one side alone: the dash has no fixed line, so the whole entry is asked for.
    private static DisputedPiece Whole(ImmutableArray<Piece> pieces, MergePlace place) => new(place.Conflict(
        "its first key is there on one side alone", "", WithDash(Text(pieces, MergeSide.Ours)), WithDash(Text(pieces, MergeSide.Theirs))));

    private static string Text(ImmutableArray<Piece> pieces, MergeSide side) => string.Concat(pieces.Select(piece => piece.Of(side)));

    private static string WithDash(string text)
    {
        var isDone = false;
        return string.Concat(Lines.Of(text).Select(line =>
        {
            if (isDone || Lines.IsBlank(line) || Lines.IsComment(line)) return line;
            isDone = true;
            return "-" + line[1..];
        }));
    }

    private static bool HasContent(Piece piece, MergeSide side) => Lines.ContentColumn(piece.Of(side)) is not null;

    private static int Column(Chunk entry) => 1 + Lines.Indent(entry.Own[1..]);
}
