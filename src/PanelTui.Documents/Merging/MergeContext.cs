using System.Collections.Immutable;

namespace PanelTui.Documents.Merging;

/// <summary>What a merge is told beforehand, and what it notes on the way.</summary>
/// <param name="HeldCircuits">The other side's circuits, by their place in its file, whose space and poles collide.</param>
internal sealed record MergeContext(ImmutableHashSet<int> HeldCircuits)
{
    /// <summary>The merged circuits in their order: their places in our file and in the other side's.</summary>
    public List<(int? Ours, int? Theirs)> Circuits { get; } = [];
}
