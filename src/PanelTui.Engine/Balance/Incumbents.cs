using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>The best plan found so far for each number of moves; none is worse than the one of fewer moves.</summary>
internal sealed class Incumbents
{
    /// <summary>A smaller gain is rounding.</summary>
    public const double Least = 1e-9;

    private readonly double[] _percents;
    private readonly ImmutableArray<Hop>[] _plans;

    public Incumbents(double now, int most)
    {
        _percents = new double[most + 1];
        _plans = new ImmutableArray<Hop>[most + 1];
        Array.Fill(_percents, now);
        Array.Fill(_plans, []);
    }

    public int Most => _percents.Length - 1;

    public double At(int moves) => _percents[Math.Min(moves, Most)];

    public ImmutableArray<Hop> PlanAt(int moves) => _plans[moves];

    public bool Betters(double percent, int moves) => moves <= Most && percent < _percents[moves] - Least;

    public void Take(double percent, ImmutableArray<Hop> plan)
    {
        for (var moves = plan.Length; moves <= Most && percent < _percents[moves] - Least; moves++)
            (_percents[moves], _plans[moves]) = (percent, plan);
    }
}
