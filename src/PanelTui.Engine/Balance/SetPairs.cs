namespace PanelTui.Engine.Balance;

/// <summary>Two tables of sets, one sorted by what it sums to: for each set of one, those of the other that make the legs even enough.</summary>
internal sealed class SetPairs
{
    private readonly MoveSets _second;
    private readonly int[] _order;
    private readonly List<(short Flow, int From, int To)> _runs = [];

    public SetPairs(MoveSets second)
    {
        _second = second;
        _order = [.. Enumerable.Range(0, second.Count)];
        Array.Sort(_order, Compare);
        for (var at = 0; at < _order.Length; at++)
        {
            var flow = FlowOf(_order[at]);
            if (_runs.Count == 0 || _runs[^1].Flow != flow) _runs.Add((flow, at, at + 1));
            else _runs[^1] = (flow, _runs[^1].From, at + 1);
        }
    }

    /// <summary>Runs of sets with one flow on two legs; on three all are one run, for there are too many flows.</summary>
    public IEnumerable<(short Flow, int From, int To)> Runs => _runs;

    public int At(int place) => _order[place];

    /// <summary>The first place of a run whose first sum is not below the bound.</summary>
    public int From(long bound, int from, int to)
    {
        while (from < to)
        {
            var middle = (from + to) / 2;
            if (_second.Sums[_order[middle] * _second.Width] < bound) from = middle + 1;
            else to = middle;
        }
        return from;
    }

    private int Compare(int one, int other)
    {
        var flow = FlowOf(one).CompareTo(FlowOf(other));
        return flow != 0 ? flow : _second.Sums[one * _second.Width].CompareTo(_second.Sums[other * _second.Width]);
    }

    private short FlowOf(int index) => _second.Legs == 2 ? _second.Flows[index * _second.Legs] : (short)0;
}
