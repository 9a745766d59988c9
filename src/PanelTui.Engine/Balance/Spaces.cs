using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>Gives single breakers that change their leg a space: another's who comes the other way first, so that two change places.</summary>
internal static class Spaces
{
    public static ImmutableArray<Hop> Assign(Board board, IReadOnlyDictionary<int, int> going, List<int> free)
    {
        var open = new SortedSet<int>(free);
        var left = going.Keys.ToList();
        var hops = new List<Hop>();
        while (left.Count > 0)
        {
            var circuit = left[0];
            left.RemoveAt(0);
            var own = SpaceOf(board, circuit);
            var partner = left.FindIndex(other => going[other] == board.PhaseOf(circuit) && going[circuit] == board.PhaseOf(other)
                && open.Contains(SpaceOf(board, other)) && open.Contains(own) && SpaceOf(board, other) != own);
            if (partner >= 0)
            {
                Seat(hops, open, left[partner], own);
                Seat(hops, open, circuit, SpaceOf(board, left[partner]));
                left.RemoveAt(partner);
            }
            else hops.Add(new Hop(circuit, default));
        }
        return Rest(board, going, open, hops);
    }

    /// <summary>Those without a partner take what is open on their leg, the nearest first; never the space they leave.</summary>
    private static ImmutableArray<Hop> Rest(Board board, IReadOnlyDictionary<int, int> going, SortedSet<int> open, List<Hop> hops)
    {
        foreach (var at in Enumerable.Range(0, hops.Count).Where(at => hops[at].To.Number == 0).ToList())
        {
            var (circuit, own) = (hops[at].Ordinal, SpaceOf(board, hops[at].Ordinal));
            var to = open.Where(space => space != own && board.PhaseAt(new SpaceNumber(space)) == going[circuit])
                .MinBy(space => (Math.Abs(space - own), space));
            open.Remove(to);
            hops[at] = new Hop(circuit, new SpaceNumber(to));
        }
        return [.. hops];
    }

    private static void Seat(List<Hop> hops, SortedSet<int> open, int circuit, int space)
    {
        open.Remove(space);
        hops.Add(new Hop(circuit, new SpaceNumber(space)));
    }

    private static int SpaceOf(Board board, int circuit) => board.Schedule.Circuits[circuit].Space.Number;
}
