namespace PanelTui.Engine.Balance;

/// <summary>A table of sets as a second half: by the slots they take up on each leg, then by what they add to the first leg.</summary>
internal sealed class SetPairs
{
    private const int KeyBits = 16;

    private readonly int[] _order;
    private readonly long[] _sums;
    private readonly List<Run> _runs = [];

    public SetPairs(MoveSets second)
    {
        (_order, _sums) = (new int[second.Count], new long[second.Count]);
        var at = 0;
        foreach (var flow in Enumerable.Range(0, second.Count).GroupBy(index => KeyOf(second.FlowAt(index))))
        {
            var from = at;
            foreach (var index in flow)
            {
                _sums[at] = second.Sums[index * second.Width];
                _order[at++] = index;
            }
            Array.Sort(_sums, _order, from, at - from);
            _runs.Add(new Run(from, at));
        }
    }

    /// <summary>Sets that take up as many slots more on each leg, sorted by their first sum.</summary>
    internal readonly record struct Run(int From, int To);

    public IReadOnlyList<Run> Runs => _runs;

    /// <summary>What one leg gets the others lose, so all legs but the last tell it.</summary>
    public static int KeyOf(ReadOnlySpan<short> flow) => flow.Length == 2 ? flow[0] : (flow[0] << KeyBits) + flow[1];

    public int At(int place) => _order[place];

    /// <summary>What the set at a place adds to the first leg.</summary>
    public long SumAt(int place) => _sums[place];

    /// <summary>The first place of a run whose first sum is not below the bound.</summary>
    public int From(long bound, int from, int to)
    {
        while (from < to)
        {
            var middle = (from + to) / 2;
            if (_sums[middle] < bound) from = middle + 1;
            else to = middle;
        }
        return from;
    }
}
