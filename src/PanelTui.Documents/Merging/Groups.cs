namespace PanelTui.Documents.Merging;

/// <summary>Entries joined into groups: a forest of parents, paths halved on the way up (union-find; R. E. Tarjan, 1975, from memory).</summary>
internal sealed class Groups(int count)
{
    private readonly int[] _parents = [.. Enumerable.Range(0, count)];
    private readonly HashSet<int> _shared = [];

    public void Join(int one, int other)
    {
        _shared.Add(one);
        _shared.Add(other);
        _parents[Of(one)] = Of(other);
    }

    /// <summary>The entry that stands for the group.</summary>
    public int Of(int entry)
    {
        while (_parents[entry] != entry)
        {
            _parents[entry] = _parents[_parents[entry]];
            entry = _parents[entry];
        }

        return entry;
    }

    /// <summary>True when the entry was joined to another.</summary>
    public bool IsShared(int entry) => _shared.Contains(entry);
}
