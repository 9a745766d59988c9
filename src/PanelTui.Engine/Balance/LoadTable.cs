using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>Leg loads as whole numbers, so that sums of them are exact: what the panel has now, and what each circuit would shift.</summary>
/// <remarks>
/// Each scenario is a row of legs; the last leg is not kept, for the total never changes. The unit is a millionth of a VA or watt, or a
/// whole one for totals beyond any panel.
/// </remarks>
internal sealed class LoadTable
{
    private const decimal Fine = 1_000_000;
    private const decimal LargestFine = 1_000_000_000;

    private readonly long[][] _deltas;

    private LoadTable(int legs, long[] now, long[] totals, long[][] deltas)
    {
        Legs = legs;
        Now = now;
        Totals = totals;
        Weights = [.. totals.Select(total => total > 0 ? 100d / total : 0)];
        _deltas = deltas;
    }

    public int Legs { get; }

    /// <summary>The legs but the last, row by row.</summary>
    public long[] Now { get; }

    /// <summary>The total of each row.</summary>
    public long[] Totals { get; }

    /// <summary>Turns legs times the largest deviation from the mean into per cent, for each row.</summary>
    public double[] Weights { get; }

    public int Width => Now.Length;

    /// <summary>What it adds when this circuit's top pole goes to another leg.</summary>
    public long[] DeltaOf(int circuit, int phase) => _deltas[(circuit * Legs) + phase];

    /// <summary>Whether it shifts nothing, wherever it sits.</summary>
    public bool IsNeutral(int circuit) =>
        Enumerable.Range(0, Legs).All(phase => Array.TrueForAll(DeltaOf(circuit, phase), part => part == 0));

    /// <summary>The imbalance in per cent with these sums added to what is there now.</summary>
    public double PercentWith(ReadOnlySpan<long> added)
    {
        var worst = 0d;
        for (var row = 0; row < Totals.Length; row++)
            worst = Math.Max(worst, DeviationWith(added, row) * Weights[row]);
        return worst;
    }

    public static LoadTable Of(Board board, BalanceBy by)
    {
        var rows = BalanceGauge.Rows(board.Schedule, by);
        var scale = rows.IsEmpty || rows.Max(row => row.Sum()) < LargestFine ? Fine : 1;
        long[] Whole(IEnumerable<decimal> values) => [.. values.Select(value => (long)Math.Round(value * scale, MidpointRounding.ToEven))];
        var now = rows.Select(row => Whole(row)).ToArray();
        var shifts = by is BalanceBy.ByDemand ? Probed(board, by) : Turned(board, by);
        return new LoadTable(
            board.Legs,
            [.. now.SelectMany(row => row[..^1])],
            [.. now.Select(row => row.Aggregate(0L, (sum, leg) => sum + leg))],
            [.. shifts.Select(shift => Whole(shift))]);
    }

    private long DeviationWith(ReadOnlySpan<long> added, int row)
    {
        var (first, last, most) = (row * (Legs - 1), Totals[row], 0L);
        for (var leg = first; leg < first + Legs - 1; leg++)
        {
            var load = Now[leg] + added[leg];
            last -= load;
            most = Math.Max(most, Math.Abs((Legs * load) - Totals[row]));
        }
        return Math.Max(most, Math.Abs((Legs * last) - Totals[row]));
    }

    /// <summary>A circuit a row further down has each pole on the next leg.</summary>
    private static IEnumerable<decimal[]> Turned(Board board, BalanceBy by)
    {
        var (legs, parts) = (board.Legs, BalanceGauge.Parts(board.Schedule, by));
        return
            from circuit in Enumerable.Range(0, board.Count)
            from phase in Enumerable.Range(0, legs)
            let turn = phase - board.PhaseOf(circuit) + legs
            select parts[circuit].SelectMany(row => Enumerable.Range(0, legs - 1).Select(leg => row[(leg + legs - (turn % legs)) % legs] - row[leg])).ToArray();
    }

    /// <summary>Worked out anew with each circuit on each leg: what shares a demand factor depends on all of it.</summary>
    private static IEnumerable<decimal[]> Probed(Board board, BalanceBy by)
    {
        var now = BalanceGauge.Rows(board.Schedule, by);
        foreach (var circuit in board.Schedule.Circuits)
        {
            for (var phase = 0; phase < board.Legs; phase++)
            {
                var there = board.PhaseOf(circuit.Ordinal) == phase || board.Staying[circuit.Ordinal] is not null
                    ? now
                    : BalanceGauge.Rows(Rehung.With(board.Schedule, [new Hop(circuit.Ordinal, new SpaceNumber((2 * phase) + 1))]), by);
                yield return [.. there.SelectMany((row, at) => row.Take(row.Length - 1).Select((leg, index) => leg - now[at][index]))];
            }
        }
    }
}
