using System.Collections.Immutable;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Merging;

/// <summary>Two versions of a schedule that come from one, made into one again by what they say: ours with the other side's changes.</summary>
public sealed class ScheduleMerge
{
    private readonly SourceText? _ours;
    private readonly ImmutableArray<Piece> _pieces;

    internal ScheduleMerge(SourceText? ours, ImmutableArray<Piece> pieces, string? whyNot = null)
    {
        _ours = ours;
        _pieces = pieces;
        WhyNot = whyNot;
        Conflicts = [.. pieces.OfType<DisputedPiece>().Select(piece => piece.Conflict)];
    }

    /// <summary>Why the versions cannot be merged by what they say, as a sentence; null where they could.</summary>
    public string? WhyNot { get; }

    /// <summary>What a person has to settle, in the order of the file.</summary>
    public ImmutableArray<MergeConflict> Conflicts { get; }

    /// <summary>Whether it was merged and nothing is left to settle.</summary>
    public bool IsClean => WhyNot is null && Conflicts.IsEmpty;

    /// <summary>The merged file with each conflict settled by the side that is named for it, in their order.</summary>
    /// <exception cref="InvalidOperationException"><see cref="WhyNot"/> is not null.</exception>
    public SourceText Settled(Func<int, MergeSide> sideOf)
    {
        var number = 0;
        return Source(piece => piece.Of(piece is DisputedPiece ? sideOf(number++) : MergeSide.Ours));
    }

    /// <summary>The merged file with every conflict settled by one side.</summary>
    public SourceText Settled(MergeSide side = MergeSide.Ours) => Settled(_ => side);

    /// <summary>The merged file with git's markers around what is not settled; no YAML on purpose, where there are conflicts.</summary>
    public string WithMarkers(MarkerLabels labels) =>
        Written(piece => piece is DisputedPiece disputed ? labels.Around(disputed.Conflict) : piece.Of(MergeSide.Ours));

    /// <summary>Merges. A pure function; it never throws for what the files hold.</summary>
    public static ScheduleMerge Of(SourceText ancestor, SourceText ours, SourceText theirs) =>
        new MergeSteps(ancestor, ours, theirs).Merge();

    /// <summary>A merge that could not even be tried.</summary>
    public static ScheduleMerge Impossible(string whyNot) => new(null, [], whyNot);

    /// <summary>As <see cref="WithMarkers"/>, as the bytes of our file, its byte order mark included.</summary>
    public byte[] MarkedBytes(MarkerLabels labels) =>
        [.. _ours is { HasBom: true } ? "\uFEFF"u8 : default, .. System.Text.Encoding.UTF8.GetBytes(WithMarkers(labels))];

    private SourceText Source(Func<Piece, string> textOf) =>
        (_ours ?? throw new InvalidOperationException(WhyNot)).WithText(Written(textOf));

    // In our breaks, and without a last one where ours has none.
    private string Written(Func<Piece, string> textOf)
    {
        var text = string.Concat(_pieces.Select(textOf));
        var source = _ours ?? throw new InvalidOperationException(WhyNot);
        if (source.Text.Length > 0 && source.Text[^1] is not ('\n' or '\r') && text.EndsWith('\n')) text = text[..^1];
        return source.NewLine == "\n" ? text : text.Replace("\n", source.NewLine, StringComparison.Ordinal);
    }
}
