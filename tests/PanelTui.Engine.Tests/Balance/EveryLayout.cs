using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Balance;

/// <summary>Every lawful layout of a small panel, breaker by breaker and space by space: slow, and with no thought that could be wrong.</summary>
internal sealed class EveryLayout
{
    private readonly Schedule _schedule;
    private readonly BalanceBy _by;
    private readonly List<(SpaceNumber Top, ulong Slots)>[] _places;
    private readonly SpaceNumber[] _tops;
    private readonly decimal[] _least;
    private readonly bool _shares;
    private readonly Dictionary<int, decimal> _known = [];

    private EveryLayout(Schedule schedule, BalanceBy by)
    {
        (_schedule, _by) = (schedule, by);
        _places = [.. schedule.Circuits.Select(circuit => TopsFor(circuit).Select(top => (top, SlotsOf(circuit, top))).ToList())];
        _tops = new SpaceNumber[schedule.Circuits.Length];
        _least = [.. Enumerable.Repeat(decimal.MaxValue, schedule.Circuits.Length + 1)];
        _shares = schedule.Circuits.Any(circuit => circuit.Multiwire is not null);
    }

    /// <summary>The least imbalance in per cent with at most 0, 1, 2… moves.</summary>
    public static decimal[] LeastByMoves(Schedule schedule, BalanceBy by)
    {
        var all = new EveryLayout(schedule, by);
        all.Place(0, 0, 0);
        for (var moves = 1; moves < all._least.Length; moves++) all._least[moves] = Math.Min(all._least[moves], all._least[moves - 1]);
        return all._least;
    }

    private void Place(int ordinal, ulong taken, int moves)
    {
        if (ordinal == _tops.Length)
        {
            if (!_shares || Lawful.IsKept(Layout())) _least[moves] = Math.Min(_least[moves], Percent());
            return;
        }

        foreach (var (top, slots) in _places[ordinal])
        {
            if ((slots & taken) != 0) continue;
            _tops[ordinal] = top;
            Place(ordinal + 1, taken | slots, moves + (top == _schedule.Circuits[ordinal].Space ? 0 : 1));
        }
    }

    private Schedule Layout() => Rehung.With(_schedule, _tops.Select((top, ordinal) => new Hop(ordinal, top)));

    /// <summary>Worked out once for each choice of legs: that much is all the figure depends on.</summary>
    private decimal Percent()
    {
        var legs = 0;
        foreach (var top in _tops) legs = (3 * legs) + (top.Row % _schedule.Panel.System.Legs.Length);
        if (!_known.TryGetValue(legs, out var percent)) _known[legs] = percent = BalanceGauge.Of(Layout(), _by).Value;
        return percent;
    }

    private static ulong SlotsOf(Circuit circuit, SpaceNumber top) => circuit.Breaker.SpacesFrom(top)
        .Aggregate(0UL, (slots, space) => slots | ((space.IsHalf ? space.Half == SpaceHalf.A ? 1UL : 2UL : 3UL) << (2 * space.Number)));

    private IEnumerable<SpaceNumber> TopsFor(Circuit circuit) => circuit.Fixed
        ? [circuit.Space]
        : from number in Enumerable.Range(1, _schedule.Panel.Spaces)
          from half in circuit.Space.IsHalf ? (SpaceHalf[])[SpaceHalf.A, SpaceHalf.B] : [SpaceHalf.Whole]
          let top = new SpaceNumber(number, half)
          where circuit.Breaker.SpacesFrom(top).All(space => Lawful.Exists(_schedule, space))
          select top;
}
