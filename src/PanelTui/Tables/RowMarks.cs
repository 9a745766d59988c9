using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Tables;

/// <summary>The circuits that are marked, through changes of the schedule: where circuits came or went, by id, else by space and name.</summary>
internal sealed class RowMarks
{
    private readonly HashSet<int> _marked = [];
    private Schedule? _of;

    /// <summary>By their places in the file, in its order.</summary>
    public ImmutableArray<int> In(Schedule schedule)
    {
        Follow(schedule);
        return [.. _marked.Order()];
    }

    public void Turn(Schedule schedule, int circuit)
    {
        Follow(schedule);
        if (!_marked.Remove(circuit)) _marked.Add(circuit);
    }

    public void Add(Schedule schedule, IEnumerable<int> circuits)
    {
        Follow(schedule);
        _marked.UnionWith(circuits);
    }

    public void Clear() => _marked.Clear();

    private void Follow(Schedule schedule)
    {
        var before = _of;
        _of = schedule;
        if (before is null || before.Circuits.Length == schedule.Circuits.Length) return;
        var known = before.Circuits.Where(circuit => _marked.Contains(circuit.Ordinal)).Select(KeyOf).ToHashSet();
        _marked.Clear();
        _marked.UnionWith(schedule.Circuits.Where(circuit => known.Contains(KeyOf(circuit))).Select(circuit => circuit.Ordinal));
    }

    private static string KeyOf(Circuit circuit) => circuit.Id ?? $"{circuit.Space}\n{circuit.Name}";
}
