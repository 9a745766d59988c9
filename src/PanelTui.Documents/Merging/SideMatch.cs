using System.Collections.Immutable;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>The entries of one side beside those of the ancestor.</summary>
internal sealed class SideMatch
{
    private readonly Chunks _was;
    private readonly Chunks _now;
    private readonly Pairing _pairing;
    private readonly int _firstNode;
    private readonly Dictionary<int, int> _standIns = [];
    private readonly HashSet<int> _placed = [];

    /// <param name="firstNode">The number of this side's first entry among the entries of all versions.</param>
    public SideMatch(Chunks was, ImmutableArray<Identity> old, Chunks now, Func<YamlNode, Identity> identity, int firstNode)
    {
        (_was, _now, _firstNode) = (was, now, firstNode);
        ImmutableArray<Identity> all = [.. now.All.Select(chunk => identity(chunk.Value))];
        _pairing = Pairing.Of(old, all);
        Doubts = [.. _pairing.Doubts()];
        New = [.. Enumerable.Range(0, all.Length).Where(index => _pairing.Before(index) is null)];
        Added = [.. New.Select(index => AsAdded(all[index]))];
        foreach (var (before, after) in Doubts.OrderByDescending(doubt => old[doubt.Before].Place == all[doubt.After].Place))
        {
            if (!_standIns.ContainsKey(before) && _placed.Add(after)) _standIns[before] = after;
        }
    }

    /// <summary>Pairs of an entry of the ancestor and one of this side that may be one.</summary>
    public ImmutableArray<(int Before, int After)> Doubts { get; }

    /// <summary>The entries of this side that are certainly none of the ancestor's, or may be one.</summary>
    public ImmutableArray<int> New { get; }

    /// <summary>The marks of <see cref="New"/>, to be compared with what the other side added.</summary>
    public ImmutableArray<Identity> Added { get; }

    public int Node(int index) => _firstNode + index;

    /// <summary>The counterpart of an entry of the ancestor, or what stands in its place and may be it.</summary>
    public int? After(int was) => _pairing.After(was) ?? (_standIns.TryGetValue(was, out var one) ? one : null);

    /// <summary>True when it is certain which entry of this side it is.</summary>
    public bool IsKnown(int was) => _pairing.After(was) is not null;

    /// <summary>What stands in the place of an entry of the ancestor and may be it; null for nothing.</summary>
    public YamlNode? StandIn(int was) => _standIns.TryGetValue(was, out var one) ? _now.All[one].Value : null;

    /// <summary>True when an entry stands in the place of one that it may be.</summary>
    public bool IsPlaced(int index) => _placed.Contains(index);

    /// <summary>Those of <see cref="New"/> that stand in no other's place, each with its position there.</summary>
    public IEnumerable<(int Position, int Index)> Unplaced() => New.Select((index, position) => (position, index)).Where(one => !IsPlaced(one.index));

    /// <summary>True when this side left the entry alone: it says the same, without a new comment.</summary>
    public bool IsAsItWas(int was) => _pairing.After(was) is { } now && OneSided.IsAsItWas(_was.All[was], _now.All[now]);

    // Two new entries are one by their ids, or by a name that tells something; equal loads alone tell nothing.
    private static Identity AsAdded(Identity identity)
    {
        var name = string.Equals(identity.Name, "spare", StringComparison.OrdinalIgnoreCase) ? null : identity.Name;
        return identity with { Name = name, Body = null, Hints = name is null ? [] : [name] };
    }
}
