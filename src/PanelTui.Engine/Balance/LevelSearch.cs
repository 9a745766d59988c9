namespace PanelTui.Engine.Balance;

/// <summary>Looks at every set of so many moves that could beat the best plan so far: two halves of it that meet in the middle.</summary>
internal sealed class LevelSearch(
    LoadTable loads, LeastBound bound, RoomCheck room, MoveTables tables, Packing packing, Incumbents best, CancellationToken stop)
{
    /// <summary>Sets that need others to make room wait for their number of moves; more than this are not kept.</summary>
    private const int MostWaiting = 200_000;

    private readonly SortedDictionary<int, List<Candidate>> _waiting = [];
    private readonly Dictionary<int, SetPairs> _sorted = [];

    private readonly Dictionary<(SetPairs Pairs, int Flow), List<(int From, int To, int Extra)>> _roomy = [];

    private readonly short[] _noFlow = new short[loads.Legs];

    private readonly record struct Candidate(double Percent, int Moves, MoveSets.Link First, MoveSets.Link? Second);

    public bool HasWaiting => _waiting.Count > 0;

    /// <summary>
    /// Whether nothing better is left to be found; not known where the tables grew too large or the search was stopped.
    /// </summary>
    public bool Search(int moves)
    {
        var least = bound.Of(moves) + Incumbents.Least;
        if (!TryWaiting(moves)) return best.At(moves) <= least;
        var half = (moves + 1) / 2;
        for (var first = half; first <= Math.Min(moves, half + StayingPut.LargestGroup - 1) && best.At(moves) > least; first++)
            if (!Join(first, moves - first, half, least)) return best.At(moves) <= least;
        return best.At(moves) <= least || !stop.IsCancellationRequested;
    }

    /// <summary>The waiting sets, best first: the first that fits makes most of the others pointless.</summary>
    private bool TryWaiting(int moves)
    {
        if (!_waiting.Remove(moves, out var waiting)) return true;
        foreach (var candidate in waiting.OrderBy(candidate => candidate.Percent))
        {
            if (!best.Betters(candidate.Percent, moves)) break;
            if (!Try(candidate, moves)) return false;
        }
        return true;
    }

    /// <param name="half">A first half is shortest: without its last option it is below this, so each set comes up once.</param>
    /// <param name="least">No plan is below this, so the first that reaches it ends the search.</param>
    private bool Join(int firstCost, int secondCost, int half, double least)
    {
        if (tables.Firsts(firstCost, half, stop) is not { } firsts || tables.Of(secondCost, stop) is not { } seconds) return false;
        var pairs = secondCost == 0 ? null : Sorted(secondCost, seconds);
        for (var first = 0; first < firsts.Count; first++)
        {
            if ((first & 255) == 0 && stop.IsCancellationRequested) return false;
            if (tables.Pieces[firsts.Links[first].First].Twin) continue;
            var looked = pairs is null
                ? Look(new Candidate(loads.PercentWith(firsts.SumsAt(first)), firstCost, firsts.Links[first], null), room.ExtraMoves(firsts.FlowAt(first), _noFlow))
                : JoinOne(firsts, firstCost, first, seconds, secondCost, pairs);
            if (!looked) return false;
            if (best.At(firstCost + secondCost) <= least) return true;
        }
        return true;
    }

    private SetPairs Sorted(int cost, MoveSets sets)
    {
        if (!_sorted.TryGetValue(cost, out var pairs)) _sorted[cost] = pairs = new SetPairs(sets);
        return pairs;
    }

    /// <summary>The runs for which there is room beside a set of this flow, and the moves beyond their own that this takes.</summary>
    private List<(int From, int To, int Extra)> Roomy(SetPairs pairs, MoveSets seconds, ReadOnlySpan<short> flow)
    {
        var key = (pairs, SetPairs.KeyOf(flow));
        if (_roomy.TryGetValue(key, out var runs)) return runs;
        runs = [];
        foreach (var run in pairs.Runs)
        {
            var extra = room.ExtraMoves(flow, seconds.FlowAt(pairs.At(run.From)));
            if (extra >= 0) runs.Add((run.From, run.To, extra));
        }
        return _roomy[key] = runs;
    }

    private bool JoinOne(MoveSets firsts, int firstCost, int first, MoveSets seconds, int secondCost, SetPairs pairs)
    {
        var sums = firsts.SumsAt(first);
        var moves = firstCost + secondCost;
        Span<long> together = stackalloc long[loads.Width];
        foreach (var (from, to, extra) in Roomy(pairs, seconds, firsts.FlowAt(first)))
        {
            var (low, high) = Window(sums[0], moves + extra);
            for (var place = pairs.From(low, from, to); place < to; place++)
            {
                if (pairs.SumAt(place) > high) break;
                var second = pairs.At(place);
                if (!tables.Follows(firsts.Links[first], seconds.Links[second].First, seconds.Links[second].FirstOption)) continue;
                for (var at = 0; at < together.Length; at++) together[at] = sums[at] + seconds.Sums[(second * seconds.Width) + at];
                var candidate = new Candidate(loads.PercentWith(together), moves, firsts.Links[first], seconds.Links[second]);
                if (!Look(candidate, extra)) return false;
                (low, high) = Window(sums[0], moves + extra);
            }
        }
        return true;
    }

    /// <summary>Where the first leg of the first row must end up to beat the best plan of so many moves.</summary>
    private (long Low, long High) Window(long already, int moves)
    {
        if (loads.Weights[0] == 0) return (long.MinValue, long.MaxValue);
        var off = best.At(moves) / loads.Weights[0];
        var target = loads.Totals[0] - (loads.Legs * (loads.Now[0] + already));
        return ((long)Math.Floor((target - off) / loads.Legs), (long)Math.Ceiling((target + off) / loads.Legs));
    }

    /// <param name="extra">Moves beyond its own that make room for it; -1 where there can be none.</param>
    private bool Look(Candidate candidate, int extra) =>
        extra < 0 || !best.Betters(candidate.Percent, candidate.Moves + extra) || Try(candidate, candidate.Moves + extra);

    private bool Try(Candidate candidate, int budget)
    {
        var options = tables.Chosen(candidate.First).Concat(candidate.Second is { } second ? tables.Chosen(second) : []);
        if (packing.Find(options, budget, stop) is { } plan)
        {
            best.Take(candidate.Percent, plan);
            return true;
        }
        if (stop.IsCancellationRequested) return false;
        return packing.Next == int.MaxValue || Wait(candidate, packing.Next);
    }

    private bool Wait(Candidate candidate, int moves)
    {
        if (!best.Betters(candidate.Percent, moves)) return true;
        if (!_waiting.TryGetValue(moves, out var waiting)) _waiting[moves] = waiting = [];
        waiting.Add(candidate);
        return waiting.Count < MostWaiting;
    }
}
