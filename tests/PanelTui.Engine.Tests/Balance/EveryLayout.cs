using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Balance;

/// <summary>Every lawful layout of a small panel, breaker by breaker and space by space: slow, and with no thought that could be wrong.</summary>
internal sealed class EveryLayout(Schedule schedule, BalanceBy by)
{
    private readonly decimal[] _least = [.. Enumerable.Repeat(decimal.MaxValue, schedule.Circuits.Length + 1)];

    private readonly Dictionary<int, decimal> _known = [];

    /// <summary>The least imbalance in per cent with at most 0, 1, 2… moves.</summary>
    public static decimal[] LeastByMoves(Schedule schedule, BalanceBy by)
    {
        var all = new EveryLayout(schedule, by);
        all.Place(schedule, 0, 0);
        for (var moves = 1; moves < all._least.Length; moves++) all._least[moves] = Math.Min(all._least[moves], all._least[moves - 1]);
        return all._least;
    }

    private void Place(Schedule layout, int ordinal, int moves)
    {
        if (ordinal == layout.Circuits.Length)
        {
            if (Lawful.IsKept(layout)) _least[moves] = Math.Min(_least[moves], PercentOf(layout));
            return;
        }

        foreach (var top in TopsFor(schedule.Circuits[ordinal]))
        {
            var circuit = schedule.Circuits[ordinal] with { Space = top };
            if (layout.Circuits.Take(ordinal).Any(other => other.Spaces.Any(space => circuit.Spaces.Any(space.Overlaps)))) continue;
            var stays = top == schedule.Circuits[ordinal].Space;
            Place(layout with { Circuits = layout.Circuits.SetItem(ordinal, circuit) }, ordinal + 1, moves + (stays ? 0 : 1));
        }
    }

    /// <summary>Worked out once for each choice of legs: that much is all the figure depends on.</summary>
    private decimal PercentOf(Schedule layout)
    {
        var legs = layout.Circuits.Aggregate(0, (number, circuit) => (3 * number) + (int)layout.Panel.System.LegOf(circuit.Space));
        if (!_known.TryGetValue(legs, out var percent)) _known[legs] = percent = BalanceGauge.Of(layout, by).Value;
        return percent;
    }

    private IEnumerable<SpaceNumber> TopsFor(Circuit circuit) => circuit.Fixed
        ? [circuit.Space]
        : from number in Enumerable.Range(1, schedule.Panel.Spaces)
          from half in circuit.Space.IsHalf ? (SpaceHalf[])[SpaceHalf.A, SpaceHalf.B] : [SpaceHalf.Whole]
          let top = new SpaceNumber(number, half)
          where circuit.Breaker.SpacesFrom(top).All(space => Lawful.Exists(schedule, space))
          select top;
}
