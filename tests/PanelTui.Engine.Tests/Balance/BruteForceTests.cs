using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;

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

    private static void ShouldBeLeast(Schedule schedule, BalanceBy by)
    {
        var least = EveryLayout.LeastByMoves(schedule, by);
        var frontier = BalanceSearch.Of(schedule, by, null, TestContext.Current.CancellationToken);
        frontier.IsComplete.ShouldBeTrue();
        for (var moves = 0; moves < least.Length; moves++)
            frontier.AtMost(moves).Imbalance.Value.ShouldBe(least[moves], Rounding, $"with {moves} moves");
    }
}
