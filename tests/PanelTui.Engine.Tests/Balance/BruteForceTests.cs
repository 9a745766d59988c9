using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Balance;

/// <summary>On small panels the frontier is that of every layout there is.</summary>
public class BruteForceTests
{
    private const decimal Rounding = 0.000001m;

    private static readonly BalanceBy[] Bys = [BalanceBy.Connected, BalanceBy.Worst, BalanceBy.Scenario("Day")];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, 60)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void No_layout_of_a_small_panel_is_better_with_as_many_moves(int number)
    {
        var system = number % 2 == 0 ? PanelSystem.SplitPhase : PanelSystem.Wye;
        var schedule = PanelByChance.Of(number, system, 6 + (number % 3), 4 + (number % 4));
        ShouldBeLeast(schedule, Bys[number % Bys.Length]);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void That_holds_for_ten_circuits_too(int number) =>
        ShouldBeLeast(PanelByChance.Of(number, number == 4 ? PanelSystem.SplitPhase : PanelSystem.Wye, 10, 10), BalanceBy.Connected);

    /// <summary>A demand factor is shared by many circuits: what is proven must hold for the demand worked out anew for each layout.</summary>
    [Theory]
    [MemberData(nameof(Demands))]
    public void What_is_proven_by_demand_holds_for_every_method_and_kind_of_load(DemandMethodName method, int number)
    {
        var system = number % 2 == 0 ? PanelSystem.SplitPhase : PanelSystem.Wye;
        var schedule = PanelByChance.OfManyKinds(700 + number, system, 6 + (number % 3), 4 + (number % 3)) with
        {
            Demand = new DemandBasis { Method = method, FloorArea = new SquareFeet(1500), MeasuredPeak = 41.A, MeasuredDays = 365 },
        };
        var least = EveryLayout.LeastByMoves(schedule, BalanceBy.Demand);
        var frontier = BalanceSearch.Of(schedule, BalanceBy.Demand, null, TestContext.Current.CancellationToken);
        foreach (var plan in frontier.Plans.AtLeastOne())
        {
            plan.Bound.Value.ShouldBeLessThanOrEqualTo(least[plan.Moves] + Rounding, $"bound with {plan.Moves} moves");
            plan.Imbalance.Value.ShouldBeGreaterThanOrEqualTo(least[plan.Moves] - Rounding);
            if (plan.IsProven) plan.Imbalance.Value.ShouldBe(least[plan.Moves], Rounding, $"with {plan.Moves} moves");
        }
        for (var moves = 0; frontier.IsComplete && moves < least.Length; moves++)
            frontier.AtMost(moves).Imbalance.Value.ShouldBe(least[moves], Rounding, $"with {moves} moves");
        (method == DemandMethodName.Selected || frontier.IsComplete).ShouldBeTrue();
        frontier.Least.Value.ShouldBeLessThanOrEqualTo(least[^1] + Rounding);
    }

    public static MatrixTheoryData<DemandMethodName, int> Demands => new(Enum.GetValues<DemandMethodName>(), Enumerable.Range(0, 24));

    private static void ShouldBeLeast(Schedule schedule, BalanceBy by)
    {
        var least = EveryLayout.LeastByMoves(schedule, by);
        var frontier = BalanceSearch.Of(schedule, by, null, TestContext.Current.CancellationToken);
        frontier.IsComplete.ShouldBeTrue();
        for (var moves = 0; moves < least.Length; moves++)
            frontier.AtMost(moves).Imbalance.Value.ShouldBe(least[moves], Rounding, $"with {moves} moves");
    }
}
