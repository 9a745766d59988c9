using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Balance;

/// <summary>Turns what the search found into plans, each worked out anew by the engine.</summary>
internal sealed class FrontierReport(Board board, BalanceBy by, Incumbents best, LeastBound bound)
{
    /// <summary>What the whole-number sums and the engine's decimals may differ by, in per cent.</summary>
    private const decimal Rounding = 0.000001m;

    /// <param name="proven">Up to this number of moves everything was looked at.</param>
    /// <param name="isComplete">Whether that holds for any number.</param>
    public BalanceFrontier Of(int proven, bool isComplete)
    {
        var plans = new List<BalancePlan> { PlanOf(0, true) };
        for (var moves = 1; moves <= best.Most; moves++)
        {
            if (best.PlanAt(moves).Length != moves) continue;
            var plan = PlanOf(moves, moves <= proven);
            if (plan.Imbalance < plans[^1].Imbalance) plans.Add(plan);
        }
        var isTrue = !IsChosenAnew && plans.TrueForAll(plan => plan.IsProven || plan.Moves > proven);
        return new BalanceFrontier
        {
            Schedule = board.Schedule,
            By = by,
            Plans = [.. plans],
            Staying = StayingOf(board),
            Least = !isTrue ? Percent.Zero : isComplete ? plans[^1].Imbalance : Shown(bound.Of(int.MaxValue), plans[^1].Imbalance),
            IsComplete = isComplete && isTrue,
        };
    }

    public static ImmutableArray<StayingBreaker> StayingOf(Board board) =>
    [
        .. board.Schedule.Circuits.Where(circuit => board.Staying[circuit.Ordinal] is not null)
            .Select(circuit => new StayingBreaker(circuit, board.Staying[circuit.Ordinal]!)),
    ];

    /// <remarks>
    /// A demand that is chosen anew for each layout need not be the sum of its circuits' parts. Then the figure is still the true
    /// one, and nothing is claimed beyond it.
    /// </remarks>
    private BalancePlan PlanOf(int moves, bool isProven)
    {
        var hops = best.PlanAt(moves);
        var rows = BalanceGauge.Rows(Rehung.With(board.Schedule, hops), by);
        var imbalance = BalanceGauge.Of(rows);
        var isSum = !IsChosenAnew && Math.Abs(imbalance.Value - (decimal)best.At(moves)) < Rounding;
        return new BalancePlan
        {
            Hops = [.. hops.OrderBy(hop => board.Schedule.Circuits[hop.Ordinal].Space)],
            Rows = rows,
            Imbalance = imbalance,
            IsProven = moves == 0 || (isProven && isSum),
            Bound = moves == 0 || (isProven && isSum) ? imbalance : isSum ? Shown(bound.Of(moves), imbalance) : Percent.Zero,
        };
    }

    /// <summary>The method that names no load of its own takes the scenario that loads a leg most, which a move can change.</summary>
    private bool IsChosenAnew => by is BalanceBy.ByDemand
        && board.Schedule is { Demand.Method: DemandMethodName.Selected, Scenarios.Length: > 1 };

    private static Percent Shown(double percent, Percent most) => new(Math.Min((decimal)percent, most.Value));
}
