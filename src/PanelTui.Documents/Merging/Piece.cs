namespace PanelTui.Documents.Merging;

/// <summary>A stretch of whole lines of the merged file: settled, or with a line for each side.</summary>
internal abstract record Piece
{
    /// <summary>The lines if every question is settled this way.</summary>
    public abstract string Of(MergeSide side);

    /// <summary>The same with each stretch of lines changed, such as indented.</summary>
    public abstract Piece Select(Func<string, string> change);
}

internal sealed record KeptPiece(string Text) : Piece
{
    public override string Of(MergeSide side) => Text;

    public override Piece Select(Func<string, string> change) => new KeptPiece(change(Text));
}

internal sealed record DisputedPiece(MergeConflict Conflict) : Piece
{
    public override string Of(MergeSide side) => Conflict.Of(side);

    public override Piece Select(Func<string, string> change) => new DisputedPiece(Conflict with
    {
        Ancestor = change(Conflict.Ancestor), Ours = change(Conflict.Ours), Theirs = change(Conflict.Theirs),
    });
}
