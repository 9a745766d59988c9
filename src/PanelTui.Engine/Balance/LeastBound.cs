namespace PanelTui.Engine.Balance;

/// <summary>What no plan of so many moves can beat, whatever room there is.</summary>
internal sealed class LeastBound
{
    private readonly LoadTable _loads;
    private readonly long[][] _down;
    private readonly long[][] _up;
    private readonly long[] _step;

    public LeastBound(LoadTable loads, MovePiece[] pieces)
    {
        _loads = loads;
        var all = loads.Totals.Length * loads.Legs;
        (_down, _up, _step) = (new long[all][], new long[all][], new long[all]);
        for (var at = 0; at < all; at++)
        {
            var deltas = pieces.Select(piece => piece.Options.Select(option => DeltaOn(option, at)).ToArray()).ToArray();
            _down[at] = Sums(deltas.Select(options => Math.Max(0, options.Max(delta => -delta))));
            _up[at] = Sums(deltas.Select(options => Math.Max(0, options.Max())));
            _step[at] = deltas.SelectMany(options => options).Aggregate(0L, Divisor);
        }
    }

    /// <summary>In per cent: leg by leg, the moves that help most, in steps of what the loads have in common.</summary>
    public double Of(int moves)
    {
        var worst = 0d;
        for (var row = 0; row < _loads.Totals.Length; row++)
        {
            for (var leg = 0; leg < _loads.Legs; leg++)
                worst = Math.Max(worst, LeastOn(row, leg, moves) * _loads.Weights[row]);
        }
        return worst;
    }

    private long LeastOn(int row, int leg, int moves)
    {
        var (at, total) = ((row * _loads.Legs) + leg, _loads.Totals[row]);
        var off = (_loads.Legs * NowOn(row, leg)) - total;
        var reach = off > 0 ? _down[at] : _up[at];
        var most = _loads.Legs * reach[Math.Min(moves, reach.Length - 1)];
        var left = Math.Abs(off) - most;
        if (_step[at] == 0) return Math.Abs(off);
        var step = _loads.Legs * _step[at];
        var rest = Math.Abs(off) % step;
        return Math.Max(left, Math.Min(rest, step - rest));
    }

    private long NowOn(int row, int leg)
    {
        var first = row * (_loads.Legs - 1);
        return leg < _loads.Legs - 1
            ? _loads.Now[first + leg]
            : _loads.Totals[row] - _loads.Now[first..(first + _loads.Legs - 1)].Sum();
    }

    private long DeltaOn(MoveOption option, int at)
    {
        var (row, leg) = (at / _loads.Legs, at % _loads.Legs);
        var first = row * (_loads.Legs - 1);
        return leg < _loads.Legs - 1 ? option.Delta[first + leg] : -option.Delta[first..(first + _loads.Legs - 1)].Sum();
    }

    private static long[] Sums(IEnumerable<long> parts)
    {
        var sums = new List<long> { 0 };
        foreach (var part in parts.OrderDescending()) sums.Add(sums[^1] + part);
        return [.. sums];
    }

    private static long Divisor(long one, long other)
    {
        (one, other) = (Math.Abs(one), Math.Abs(other));
        while (other != 0) (one, other) = (other, one % other);
        return one;
    }
}
