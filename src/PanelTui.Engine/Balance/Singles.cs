using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>Seats single breakers around those with shapes: only the number on each leg matters, so counting decides.</summary>
internal sealed class Singles
{
    private readonly Board _board;
    private readonly int[] _all;
    private readonly bool[] _neutral;

    public Singles(Board board, LoadTable loads)
    {
        _board = board;
        _all = [.. Enumerable.Range(0, board.Count).Where(board.IsSingle)];
        _neutral = [.. Enumerable.Range(0, board.Count).Select(loads.IsNeutral)];
        var numbers = new Dictionary<string, int>();
        Kinds = [.. Enumerable.Range(0, board.Count).Select(circuit => NumberOf(KindOf(circuit, loads), numbers))];
    }

    /// <summary>A number for each circuit; singles of one number have one load, on one leg.</summary>
    public int[] Kinds { get; }

    /// <summary>
    /// The moves of all singles where at most so many are needed; nothing where they do not fit. Any single that is like a
    /// wanted one may go in its stead, and one whose space is taken by a shape does.
    /// </summary>
    /// <param name="wanted">Singles that go to another leg.</param>
    /// <param name="owner">Who has each slot, singles left out.</param>
    /// <param name="needed">The moves it takes; <see cref="int.MaxValue"/> where no number is enough.</param>
    public ImmutableArray<Hop>? Seat(IReadOnlyList<(int Circuit, int Phase)> wanted, int[] owner, int budget, out int needed)
    {
        var going = Going(wanted, owner);
        needed = int.MaxValue;
        var room = _board.RoomOn(owner);
        foreach (var circuit in _all.Where(circuit => !_neutral[circuit]))
            room[going.TryGetValue(circuit, out var leg) ? leg : _board.PhaseOf(circuit)]--;
        if (Array.Exists(room, left => left < 0)) return null;
        if (!SeatNeutral(going, room, owner)) return null;
        needed = going.Count;
        return needed <= budget ? Spaces.Assign(_board, going, Free(going, owner)) : null;
    }

    /// <summary>Who changes space, and to which leg: of each kind the displaced first, then the named ones.</summary>
    private SortedDictionary<int, int> Going(IReadOnlyList<(int Circuit, int Phase)> wanted, int[] owner)
    {
        var going = new SortedDictionary<int, int>();
        var displaced = _all.Where(circuit => !_neutral[circuit] && !IsFree(circuit, owner)).ToList();
        foreach (var kind in wanted.GroupBy(move => Kinds[move.Circuit]))
        {
            var named = kind.Select(move => move.Circuit).ToList();
            var inOrder = displaced.Where(circuit => Kinds[circuit] == kind.Key).Concat(named).Distinct();
            foreach (var (circuit, move) in inOrder.Zip(kind)) going[circuit] = move.Phase;
        }
        foreach (var circuit in displaced.Where(circuit => !going.ContainsKey(circuit))) going[circuit] = _board.PhaseOf(circuit);
        return going;
    }

    /// <summary>Breakers that shift nothing keep their space where there is room, and go wherever there is room else.</summary>
    private bool SeatNeutral(SortedDictionary<int, int> going, int[] room, int[] owner)
    {
        var leaving = new List<int>();
        foreach (var circuit in _all.Where(circuit => _neutral[circuit]))
        {
            if (IsFree(circuit, owner) && room[_board.PhaseOf(circuit)] > 0) room[_board.PhaseOf(circuit)]--;
            else leaving.Add(circuit);
        }
        foreach (var circuit in leaving)
        {
            var leg = Array.FindIndex(room, left => left > 0);
            if (leg < 0) return false;
            room[leg]--;
            going[circuit] = leg;
        }
        return true;
    }

    /// <summary>The spaces that nobody has once the going ones have left.</summary>
    private List<int> Free(SortedDictionary<int, int> going, int[] owner)
    {
        var kept = _all.Where(circuit => !going.ContainsKey(circuit)).Select(circuit => _board.Schedule.Circuits[circuit].Space.Number).ToHashSet();
        return [.. Enumerable.Range(1, _board.Spaces).Where(space => Board.IsOpen(owner, space) && !kept.Contains(space))];
    }

    private bool IsFree(int circuit, int[] owner) => Board.IsOpen(owner, _board.Schedule.Circuits[circuit].Space.Number);

    private static int NumberOf(string kind, Dictionary<string, int> numbers)
    {
        if (!numbers.TryGetValue(kind, out var number)) numbers[kind] = number = numbers.Count;
        return number;
    }

    private string KindOf(int circuit, LoadTable loads) => _board.PhaseOf(circuit)
        + ":" + string.Join(' ', Enumerable.Range(0, _board.Legs).SelectMany(phase => loads.DeltaOf(circuit, phase)));
}
