using System.Collections.Immutable;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Which entries of a list are one in three versions, and which of them are in doubt.</summary>
internal sealed class EntryMatch
{
    private readonly int _ancestors;
    private readonly SideMatch _ours;
    private readonly SideMatch _theirs;
    private readonly Pairing _added;
    private readonly Groups _groups;
    private readonly HashSet<int> _touchedByOurs;
    private readonly HashSet<int> _touchedByTheirs;

    public EntryMatch(Chunks was, Chunks mine, Chunks other, Func<YamlNode, Identity> identity)
    {
        _ancestors = was.All.Length;
        ImmutableArray<Identity> old = [.. was.All.Select(chunk => identity(chunk.Value))];
        _ours = new(was, old, mine, identity, _ancestors);
        _theirs = new(was, old, other, identity, _ancestors + mine.All.Length);
        _added = Pairing.Of(_ours.Added, _theirs.Added);
        _groups = new(_ancestors + mine.All.Length + other.All.Length);
        foreach (var (before, after) in _ours.Doubts) _groups.Join(before, _ours.Node(after));
        foreach (var (before, after) in _theirs.Doubts) _groups.Join(before, _theirs.Node(after));
        foreach (var (before, after) in _added.Doubts().Concat(_added.Pairs()))
            _groups.Join(_ours.Node(_ours.New[before]), _theirs.Node(_theirs.New[after]));
        JoinGone(old);
        _touchedByOurs = Touched(_ours);
        _touchedByTheirs = Touched(_theirs);
    }

    /// <summary>The places of an entry of the ancestor in both lists, or of what stands there and may be it.</summary>
    public (int? Ours, int? Theirs) Of(int was) => (_ours.After(was), _theirs.After(was));

    /// <summary>True for an entry of the ancestor in a group that both sides touched.</summary>
    public bool IsInDoubt(int was) => _groups.IsShared(was) && IsTouchedByBoth(was);

    /// <summary>The rest: new on one side, or on both.</summary>
    public IEnumerable<(int? Ours, int? Theirs, bool IsInDoubt)> Added()
    {
        foreach (var (index, ours) in _ours.Unplaced())
        {
            var theirs = _added.After(index) is { } same && !_theirs.IsPlaced(_theirs.New[same]) ? _theirs.New[same] : (int?)null;
            yield return (ours, theirs, IsTouchedByBoth(_ours.Node(ours)));
        }

        foreach (var (index, theirs) in _theirs.Unplaced())
        {
            if (_added.Before(index) is { } same && !_ours.IsPlaced(_ours.New[same])) continue;
            yield return (null, theirs, IsTouchedByBoth(_theirs.Node(theirs)));
        }
    }

    // Without ids, and found on neither side: what a side has added may be it, moved under a new name.
    private void JoinGone(ImmutableArray<Identity> old)
    {
        int[] gone = [.. Enumerable.Range(0, old.Length).Where(was => old[was].Id is null && IsGone(was))];
        foreach (var side in new[] { _ours, _theirs })
            JoinAll(gone, [.. side.New.Where((_, position) => side.Added[position].Id is null).Select(side.Node)]);
    }

    private bool IsGone(int was) => !_ours.IsKnown(was) && !_theirs.IsKnown(was)
        && !(_ours.StandIn(was) is { } one && _theirs.StandIn(was) is { } two && Likeness.Same(one, two));

    private void JoinAll(int[] some, int[] others)
    {
        if (some.Length == 0 || others.Length == 0) return;
        foreach (var other in others) _groups.Join(some[0], other);
        foreach (var one in some) _groups.Join(one, others[0]);
    }

    private bool IsTouchedByBoth(int node) =>
        _groups.Of(node) is var group && _touchedByOurs.Contains(group) && _touchedByTheirs.Contains(group);

    private HashSet<int> Touched(SideMatch side) =>
    [
        .. Enumerable.Range(0, _ancestors).Where(was => _groups.IsShared(was) && !side.IsAsItWas(was))
            .Concat(side.New.Select(side.Node))
            .Select(_groups.Of),
    ];
}
