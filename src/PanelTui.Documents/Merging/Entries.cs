using System.Collections.Immutable;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>One entry of a list in the three versions.</summary>
/// <param name="IsInDoubt">True when both sides touched what may be this entry, and the file does not tell whether it is.</param>
internal sealed record Entry(Chunk? Was, Chunk? Mine, Chunk? Other, int? OurIndex, int? TheirIndex, bool IsInDoubt = false);

/// <summary>The entries of a list in three versions, each with its counterparts.</summary>
/// <remarks>
/// The ancestor is paired with each side (<see cref="Pairing"/>). What is left over on one side and may be an entry of the ancestor
/// joins that entry's group, and so does what both sides added under one name. A group is in doubt when both sides touched it; then
/// each entry of it is asked for, and none takes anything from another. A group that one side left as it was needs no answer.
/// <code>
/// ancestor  1 Saw 20 A            pairs with theirs by name and space, not with ours
/// ours      1 Lathe 20 A          may be the Saw, renamed, or another machine: one group with it
/// theirs    1 Saw 15 A            touched the group too, so the merge asks: Lathe 20 A or Saw 15 A
/// </code>
/// Cost: O(n) dictionary steps for n entries, beside the order of the list (<see cref="ItemOrder"/>).
/// The scheme is the usual three-way merge of ordered trees with matched nodes (T. Lindholm, A three-way merge for XML documents,
/// 2004; from memory), with a matching that may stay undecided.
/// </remarks>
internal sealed class Entries
{
    private readonly List<Entry> _all = [];
    private readonly Dictionary<int, int> _ours = [];
    private readonly Dictionary<int, int> _theirs = [];
    private int _ancestors;

    public static Entries Of(Chunks was, Chunks mine, Chunks other, Func<YamlNode, Identity> identity)
    {
        var match = new EntryMatch(was, mine, other, identity);
        var entries = new Entries { _ancestors = was.All.Length };
        for (var index = 0; index < was.All.Length; index++)
        {
            var (ours, theirs) = match.Of(index);
            entries.Add(was.All[index], At(mine, ours), At(other, theirs), ours, theirs, match.IsInDoubt(index));
        }

        foreach (var (ours, theirs, isInDoubt) in match.Added())
            entries.Add(null, At(mine, ours), At(other, theirs), ours, theirs, isInDoubt);
        return entries;
    }

    public IEnumerable<Entry> InOrder()
    {
        ImmutableArray<int> ours = [.. _ours.OrderBy(pair => pair.Key).Select(pair => pair.Value)];
        ImmutableArray<int> theirs = [.. _theirs.OrderBy(pair => pair.Key).Select(pair => pair.Value)];
        var placed = ItemOrder.Merged([.. Enumerable.Range(0, _ancestors)], ours, theirs);
        return placed.Select(index => _all[index]);
    }

    private void Add(Chunk? was, Chunk? mine, Chunk? other, int? ours, int? theirs, bool isInDoubt)
    {
        if (ours is { } one) _ours[one] = _all.Count;
        if (theirs is { } two) _theirs[two] = _all.Count;
        _all.Add(new(was, mine, other, ours, theirs, isInDoubt));
    }

    private static Chunk? At(Chunks chunks, int? index) => index is { } at ? chunks.All[at] : null;
}
