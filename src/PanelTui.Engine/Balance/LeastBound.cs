namespace PanelTui.Engine.Balance;

/// <summary>What no plan of so many moves can beat, whatever room there is.</summary>
internal sealed class LeastBound
{
    /// <summary>Steps around the mean within which the least lies.</summary>
    private const int Around = 3;

    private readonly LoadTable _loads;
    private readonly long[][] _down;
    private readonly long[][] _up;
    private readonly long[] _inSteps;

    public LeastBound(LoadTable loads, MovePiece[] pieces)
    {
        _loads = loads;
        var all = loads.Totals.Length * loads.Legs;
        (_down, _up) = (new long[all][], new long[all][]);
        var steps = new long[all];
        for (var at = 0; at < all; at++)
        {
            var deltas = pieces.Select(piece => piece.Options.Select(option => DeltaOn(option, at)).ToArray()).ToArray();
            _down[at] = Sums(deltas.Select(options => Math.Max(0, options.Max(delta => -delta))));
            _up[at] = Sums(deltas.Select(options => Math.Max(0, options.Max())));
            steps[at] = deltas.SelectMany(options => options).Aggregate(0L, Divisor);
        }
        _inSteps = [.. loads.Totals.Select((_, row) => LeastInSteps(row, steps[(row * loads.Legs)..((row + 1) * loads.Legs)].Aggregate(0L, Divisor)))];
    }

    /// <summary>In per cent: leg by leg, the moves that help most, in steps of what the loads have in common.</summary>
    public double Of(int moves)
    {
        var worst = 0d;
        for (var row = 0; row < _loads.Totals.Length; row++)
        {
            for (var leg = 0; leg < _loads.Legs; leg++)
                worst = Math.Max(worst, LeastOn(row, leg, moves) * _loads.Weights[row]);
            worst = Math.Max(worst, _inSteps[row] * _loads.Weights[row]);
        }
        return worst;
    }

    private long LeastOn(int row, int leg, int moves)
    {
        var (at, total) = ((row * _loads.Legs) + leg, _loads.Totals[row]);
        var off = (_loads.Legs * NowOn(row, leg)) - total;
        var reach = off > 0 ? _down[at] : _up[at];
        var most = _loads.Legs * reach[Math.Min(moves, reach.Length - 1)];
        return Math.Max(0, Math.Abs(off) - most);
    }

    /// <summary>
    /// Every leg is what it is now and a multiple of what all moves have in common; of all such legs that add up, those nearest
    /// to even.
    /// </summary>
    private long LeastInSteps(int row, long step)
    {
        if (step == 0) return Enumerable.Range(0, _loads.Legs).Max(leg => Math.Abs(Off(NowOn(row, leg), row)));
        long[] near = [.. Enumerable.Range(0, _loads.Legs).Select(leg => NowOn(row, leg) - (step * (Off(NowOn(row, leg), row) / (_loads.Legs * step))))];
        return (
            from second in Enumerable.Range(-Around, (2 * Around) + 1)
            from third in _loads.Legs == 2 ? [0] : Enumerable.Range(-Around, (2 * Around) + 1)
            select LeastOf(row, near, second * step, third * step)).Min();
    }

    private long LeastOf(int row, long[] near, long second, long third)
    {
        var rest = _loads.Totals[row] - near.Skip(1).Sum() - second - third;
        var most = Math.Max(Math.Abs(Off(rest, row)), Math.Abs(Off(near[1] + second, row)));
        return near.Length == 2 ? most : Math.Max(most, Math.Abs(Off(near[2] + third, row)));
    }

    /// <summary>Legs times its deviation from the mean.</summary>
    private long Off(long load, int row) => (_loads.Legs * load) - _loads.Totals[row];

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
