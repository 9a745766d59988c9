using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Balance;

/// <summary>
/// Google OR-Tools' CP-SAT, which shares nothing with the search, finds the same optimum at every number of moves. `PANELTUI_CAMPAIGN=400` runs
/// that many panels; without it a few dozen.
/// </summary>
public class ConstraintSolverTests
{
    private const decimal Rounding = 0.000001m;
    private const int Usual = 36;

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Panels)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_general_solver_finds_no_better_plan_for_any_number_of_moves(int number)
    {
        var system = (number % 3) switch { 0 => PanelSystem.Wye, 1 => PanelSystem.TwoLegsOfWye, _ => PanelSystem.SplitPhase };
        var schedule = PanelByChance.Of(1000 + number, system, 8 + (number % 9), 5 + (number % 10));
        var frontier = BalanceSearch.Of(schedule, BalanceBy.Connected, null, TestContext.Current.CancellationToken);
        frontier.IsComplete.ShouldBeTrue();
        for (var moves = 0; moves <= frontier.Plans[^1].Moves + 1; moves++)
            frontier.AtMost(moves).Imbalance.Value.ShouldBe(ConstraintModel.Least(schedule, moves), Rounding, $"with {moves} moves");
    }

    private static int Panels =>
        int.TryParse(Environment.GetEnvironmentVariable("PANELTUI_CAMPAIGN"), out var count) ? Math.Min(count, 2000) : Usual;
}
