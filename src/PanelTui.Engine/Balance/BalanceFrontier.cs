using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Balance;

/// <summary>A breaker that stays where it is, and why.</summary>
public sealed record StayingBreaker(Circuit Circuit, string Because);

/// <summary>The least imbalance for each number of moves that is worth making.</summary>
public sealed record BalanceFrontier
{
    public required Schedule Schedule { get; init; }

    public required BalanceBy By { get; init; }

    /// <summary>The layout as it is first, then each number of moves that does better than fewer.</summary>
    public required ImmutableArray<BalancePlan> Plans { get; init; }

    public required ImmutableArray<StayingBreaker> Staying { get; init; }

    /// <summary>No number of moves gets below this.</summary>
    public required Percent Least { get; init; }

    /// <summary>Whether the last plan is proven to be the best of any number of moves.</summary>
    public required bool IsComplete { get; init; }

    public Percent Now => Plans[0].Imbalance;

    /// <summary>The last plan of at most so many moves.</summary>
    public BalancePlan AtMost(int moves) => Plans.Last(plan => plan.Moves <= Math.Max(0, moves));
}
