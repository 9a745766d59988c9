using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>Finds spaces for a set of moves: shapes are tried in every place, whatever they push away is placed too, singles are counted.</summary>
internal sealed class Packing
{
    private readonly Board _board;
    private readonly LoadTable _loads;
    private readonly Singles _singles;
    private readonly ShapePlaces _places;
    private readonly SingleMoves _least;

    private readonly int[] _owner;
    private readonly Dictionary<int, SpaceNumber> _placed = [];
    private readonly Dictionary<int, int> _phases = [];
    private readonly List<(int Circuit, int Phase)> _wanted = [];
    private int _budget;
    private CancellationToken _stop;

    public Packing(Board board, LoadTable loads)
    {
        (_board, _loads) = (board, loads);
        _singles = new Singles(board, loads);
        _places = new ShapePlaces(board);
        _least = new SingleMoves(_singles.Kinds);
        _owner = [.. board.Owner];
    }

    /// <summary>After a vain <see cref="Find"/>, the least budget that could be enough; <see cref="int.MaxValue"/> where none is.</summary>
    public int Next { get; private set; }

    /// <summary>All moves it takes, at most so many; nothing where that is not enough.</summary>
    public ImmutableArray<Hop>? Find(IEnumerable<MoveOption> options, int budget, CancellationToken stop)
    {
        _board.Owner.CopyTo(_owner, 0);
        _placed.Clear();
        _phases.Clear();
        _wanted.Clear();
        (_budget, _stop, Next) = (budget, stop, int.MaxValue);
        var pending = new List<int>();
        foreach (var (circuit, phase) in options.SelectMany(option => option.Circuits))
        {
            if (_board.IsSingle(circuit)) _wanted.Add((circuit, phase));
            else
            {
                _phases[circuit] = phase;
                pending.Add(circuit);
            }
        }
        _least.Start(_wanted.Select(move => move.Circuit));
        var lifted = pending.SelectMany(_board.Joined).Distinct().ToList();
        foreach (var circuit in lifted) Lift(circuit);
        return Place(lifted, lifted.Count(MustMove));
    }

    private bool MustMove(int circuit) => _phases.ContainsKey(circuit);

    private void Lift(int circuit) => Clear(circuit, _places.OwnSlots(circuit));

    private void PutBack(int circuit) => Take(circuit, _places.OwnSlots(circuit));

    private void Clear(int circuit, int[] slots)
    {
        foreach (var slot in slots)
            if (_owner[slot] == circuit) _owner[slot] = -1;
    }

    private void Take(int circuit, int[] slots)
    {
        foreach (var slot in slots) _owner[slot] = circuit;
    }

    /// <summary>Places what is pending, the first one everywhere it may go; <paramref name="moved"/> counts shapes that leave their space.</summary>
    private ImmutableArray<Hop>? Place(List<int> pending, int moved)
    {
        if (_stop.IsCancellationRequested) return null;
        var least = moved + _least.Least + pending.Count(IsPushedAway);
        if (least > _budget) return Fail(least);
        if (pending.Count == 0) return Settle(moved);
        var circuit = pending[0];
        var rest = pending.GetRange(1, pending.Count - 1);
        foreach (var place in _places.Of(circuit))
        {
            var stays = place.Top == _board.Schedule.Circuits[circuit].Space;
            if (!IsMeant(circuit, place.Phase) || (stays && (MustMove(circuit) || _board.Groups[circuit] < 0))) continue;
            if (PlaceAt(circuit, place, rest, moved + (stays || MustMove(circuit) ? 0 : 1)) is { } found) return found;
        }
        return null;
    }

    private ImmutableArray<Hop>? Fail(int needed)
    {
        Next = Math.Min(Next, needed);
        return null;
    }

    /// <summary>Whether it has to move and is not counted yet: a breaker on its own is lifted to go elsewhere, and another sits in its place.</summary>
    private bool IsPushedAway(int circuit) => !MustMove(circuit)
        && (_board.Groups[circuit] < 0 || Array.Exists(_places.OwnSlots(circuit), slot => _owner[slot] >= 0));

    private ImmutableArray<Hop>? PlaceAt(int circuit, ShapePlace place, List<int> rest, int moved)
    {
        _least.Cover(place.Singles);
        var found = moved + _least.Least > _budget ? Fail(moved + _least.Least) : Push(circuit, place, rest, moved);
        _least.Uncover(place.Singles);
        return found;
    }

    private ImmutableArray<Hop>? Push(int circuit, ShapePlace place, List<int> rest, int moved)
    {
        List<int>? lifted = null;
        foreach (var slot in place.Slots)
        {
            var pushed = _owner[slot];
            if (pushed < 0) continue;
            if (_placed.ContainsKey(pushed) || _board.Staying[pushed] is not null) return null;
            lifted ??= [];
            foreach (var other in _board.Joined(pushed))
                if (!_placed.ContainsKey(other) && !rest.Contains(other) && !lifted.Contains(other)) lifted.Add(other);
        }
        if (lifted is not null && moved + _least.Least >= _budget) return Fail(_budget + 1);
        return Hold(circuit, place, rest, lifted ?? [], moved);
    }

    private ImmutableArray<Hop>? Hold(int circuit, ShapePlace place, List<int> rest, List<int> lifted, int moved)
    {
        foreach (var other in lifted) Lift(other);
        _placed[circuit] = place.Top;
        Take(circuit, place.Slots);
        var found = IsLawfulSoFar(circuit) ? Place([.. rest, .. lifted], moved) : null;
        _placed.Remove(circuit);
        Clear(circuit, place.Slots);
        foreach (var other in lifted) PutBack(other);
        return found;
    }

    /// <summary>On the leg that the set asks for; else on its own, or anywhere if it shifts nothing.</summary>
    private bool IsMeant(int circuit, int phase) => _phases.TryGetValue(circuit, out var meant)
        ? phase == meant
        : _loads.IsNeutral(circuit) || phase == _board.PhaseOf(circuit);

    private bool IsLawfulSoFar(int circuit)
    {
        if (_board.Groups[circuit] < 0) return true;
        var members = _board.Joined(circuit).ToList();
        return !members.TrueForAll(_placed.ContainsKey) || Neighbours.AreLawful(
            _board.Schedule.Panel.System,
            [.. members.Select(member => _board.Schedule.Circuits[member])],
            [.. members.Select(member => _placed[member])]);
    }

    private ImmutableArray<Hop>? Settle(int moved)
    {
        if (_singles.Seat(_wanted, _owner, _budget - moved, out var needed) is { } hops)
            return [.. _placed.Where(pair => pair.Value != _board.Schedule.Circuits[pair.Key].Space).Select(pair => new Hop(pair.Key, pair.Value)), .. hops];
        if (needed < int.MaxValue) Fail(moved + needed);
        return MakeRoom(moved);
    }

    private bool CanMakeRoom(int circuit) => _board.Schedule.Circuits[circuit].Space.IsHalf || (_loads.IsNeutral(circuit)
        && _board.Joined(circuit).Sum(member => _board.Schedule.Circuits[member].Breaker.Poles) % _board.Legs != 0);

    /// <summary>
    /// Where singles lack room, a shape nobody pushed can make some: tandem halves that draw together, and what shifts
    /// nothing on any leg.
    /// </summary>
    private ImmutableArray<Hop>? MakeRoom(int moved)
    {
        foreach (var circuit in Enumerable.Range(0, _board.Count))
        {
            if (_places.Of(circuit).Length == 0 || _placed.ContainsKey(circuit) || !CanMakeRoom(circuit)) continue;
            if (moved + _least.Least >= _budget) return Fail(_budget + 1);
            var lifted = _board.Joined(circuit).ToList();
            foreach (var member in lifted) Lift(member);
            var found = Place(lifted, moved);
            foreach (var member in lifted) PutBack(member);
            if (found is not null) return found;
        }
        return null;
    }
}
