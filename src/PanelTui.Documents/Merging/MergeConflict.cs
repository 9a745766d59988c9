using PanelTui.Engine;
namespace PanelTui.Documents.Merging;

/// <summary>Something that both sides changed, each in its own way, or that does not fit together.</summary>
/// <param name="What">One sentence without a full stop: `breaker was changed on both sides`.</param>
/// <param name="Where">What it is about: `Well pump (space 5)`, or the section's key.</param>
/// <param name="Ancestor">The lines before either change; empty where there were none.</param>
/// <param name="Ours">The lines as our side has them; empty where it removed them.</param>
/// <param name="Theirs">The lines as the other side has them; empty where it removed them.</param>
public sealed record MergeConflict(string What, string Where, string Ancestor, string Ours, string Theirs)
{
    /// <summary>The lines of one side.</summary>
    public string Of(MergeSide side) => side switch
    {
        MergeSide.Ours => Ours,
        MergeSide.Theirs => Theirs,
        _ => throw Unnamed.Of(side),
    };

    /// <summary>Where and what, as one line.</summary>
    public override string ToString() => $"{Where}: {What}";
}
