using System.Diagnostics;
using System.Globalization;
using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Tests.Balance;

namespace PanelTui.Benchmarks;

/// <summary>`-- balance`: the whole frontier by the search and by CP-SAT on the same panels in the same run, and how far they are apart.</summary>
internal static class BalanceSideBySide
{
    private const int Rounds = 3;

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);

    /// <summary>CP-SAT may take this long for each number of moves; then the ratio is a least one.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    /// <param name="withSolver">CP-SAT takes minutes.</param>
    public static void Run(bool withSolver)
    {
        Console.WriteLine("spaces circuits system                  moves  first ms   all ms  complete   CP-SAT ms   ratio");
        foreach (var (spaces, breakers) in ((int, int)[])[(42, 28), (42, 36), (42, 42), (84, 56), (84, 80)])
        {
            foreach (var system in (PanelSystem[])[PanelSystem.SplitPhase, PanelSystem.Wye])
            {
                for (var number = 1; number <= 3; number++) Compare(PanelByChance.Of((100 * spaces) + number, system, spaces, breakers), withSolver);
            }
        }
    }

    private static void Compare(Schedule schedule, bool withSolver)
    {
        var runs = Enumerable.Range(0, Rounds).Select(_ => Search(schedule)).ToList();
        var (frontier, _, first) = runs.MinBy(run => run.All);
        var all = runs.Min(run => run.All);
        var (solver, inTime) = withSolver && frontier.IsComplete ? Solve(schedule, frontier) : (null, true);
        var sign = inTime ? "" : ">";
        var name = schedule.Panel.System.Name;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{schedule.Panel.Spaces,6} {schedule.Circuits.Length,8} {name,-22} {frontier.Plans[^1].Moves,6} {first.TotalMilliseconds,9:0.0} {all.TotalMilliseconds,8:0.0} {frontier.IsComplete,9} {sign,1}{solver?.TotalMilliseconds,10:0} {sign,1}{solver / all,6:0}"));
    }

    private static (BalanceFrontier Frontier, TimeSpan All, TimeSpan First) Search(Schedule schedule)
    {
        using var stop = new CancellationTokenSource(Longest);
        var clock = Stopwatch.StartNew();
        var first = TimeSpan.Zero;
        var frontier = BalanceSearch.Of(
            schedule, BalanceBy.Connected,
            found => first = first == TimeSpan.Zero && found.Plans.Length > 1 ? clock.Elapsed : first, stop.Token);
        return (frontier, clock.Elapsed, first);
    }

    /// <summary>The same numbers of moves, each proven or given up; a difference ends the run.</summary>
    private static (TimeSpan? Taken, bool InTime) Solve(Schedule schedule, BalanceFrontier frontier)
    {
        var clock = Stopwatch.StartNew();
        var inTime = true;
        for (var moves = 0; moves <= frontier.Plans[^1].Moves; moves++)
        {
            var least = ConstraintModel.Least(schedule, moves, Patience);
            inTime &= least is not null;
            if (least is not null && Math.Abs(least.Value - frontier.AtMost(moves).Imbalance.Value) > 0.000001m)
                throw new InvalidOperationException($"With {moves} moves CP-SAT has {least} %, the search {frontier.AtMost(moves).Imbalance}.");
        }
        return (clock.Elapsed, inTime);
    }
}
