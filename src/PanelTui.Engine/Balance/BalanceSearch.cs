using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>The fewest moves for the best balance, with proof as far as the search came.</summary>
public static class BalanceSearch
{
    /// <summary>Looks at one move, two moves and so on, until nothing can be better or the search is stopped.</summary>
    /// <param name="schedule">The panel as it is.</param>
    /// <param name="by">What to even out; see <see cref="BalanceGauge.WhyNot"/>.</param>
    /// <param name="found">Told after each number of moves; on the caller's thread.</param>
    /// <param name="stop">Ends the search with what was found; what was not looked at to the end is not called proven.</param>
    public static BalanceFrontier Of(
        Schedule schedule, BalanceBy by, Action<BalanceFrontier>? found = null, CancellationToken stop = default)
    {
        var board = new Board(schedule);
        if (board.Legs == 1 || BalanceGauge.Rows(schedule, by).IsEmpty) return Nothing(board, by);
        var loads = LoadTable.Of(board, by);
        var pieces = MovePieces.Of(board, loads);
        var best = new Incumbents(loads.PercentWith(new long[loads.Width]), board.Count);
        var bound = new LeastBound(loads, pieces);
        var tables = new MoveTables(pieces, loads.Width, board.Legs);
        var level = new LevelSearch(loads, bound, new RoomCheck(board, loads), tables, new Packing(board, loads), best, stop);
        var report = new FrontierReport(board, by, best, bound);
        var most = Math.Min(board.Count, pieces.Sum(piece => piece.Options.Max(option => option.Cost)));
        var proven = 0;
        while (best.At(proven) > bound.Of(int.MaxValue) + Incumbents.Least && (proven < most || level.HasWaiting) && proven < board.Count)
        {
            if (bound.Of(proven + 1) < best.At(proven + 1) - Incumbents.Least && !level.Search(proven + 1))
                return report.Of(proven, false);
            proven++;
            found?.Invoke(report.Of(proven, false));
        }
        return report.Of(board.Count, true);
    }

    private static BalanceFrontier Nothing(Board board, BalanceBy by)
    {
        var rows = BalanceGauge.Rows(board.Schedule, by);
        var now = BalanceGauge.Of(rows);
        return new BalanceFrontier
        {
            Schedule = board.Schedule,
            By = by,
            Plans = [new BalancePlan { Hops = [], Rows = rows, Imbalance = now, Bound = now, IsProven = true }],
            Staying = FrontierReport.StayingOf(board),
            Least = now,
            IsComplete = true,
        };
    }
}
