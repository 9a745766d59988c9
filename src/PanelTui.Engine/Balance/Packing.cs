using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>Finds spaces for a set of moves: shapes are tried in every place, whatever they push away is placed too, singles are counted.</summary>
internal sealed class Packing
{
    private readonly Board _board;
    private readonly LoadTable _loads;
    private readonly Singles _singles;
    private readonly SpaceNumber[][] _tops;

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
        _tops = [.. Enumerable.Range(0, board.Count).Select(circuit =>
            board.Staying[circuit] is null && !board.IsSingle(circuit) ? board.TopsFor(circuit).ToArray() : [])];
        _owner = [.. board.Owner];
    }

    /// <summary>All moves it takes, at most so many; nothing where that is not enough.</summary>
    public ImmutableArray<Hop>? Find(IEnumerable<MoveOption> options, int budget, CancellationToken stop)
    {
        _board.Owner.CopyTo(_owner, 0);
        _placed.Clear();
        _phases.Clear();
        _wanted.Clear();
        (_budget, _stop) = (budget, stop);
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
        var lifted = pending.SelectMany(_board.Joined).Distinct().ToList();
        foreach (var circuit in lifted) Lift(circuit);
        return Place(lifted, lifted.Count(MustMove));
    }

    private bool MustMove(int circuit) => _phases.ContainsKey(circuit);

    private void Lift(int circuit) => Clear(circuit, _board.Schedule.Circuits[circuit].Space);

    private void Clear(int circuit, SpaceNumber top)
    {
        foreach (var slot in _board.SlotsOf(circuit, top))
            if (_owner[slot] == circuit) _owner[slot] = -1;
    }

    /// <summary>Places what is pending, the first one everywhere it may go; <paramref name="moved"/> counts shapes that leave their space.</summary>
    private ImmutableArray<Hop>? Place(List<int> pending, int moved)
    {
        if (moved + _wanted.Count > _budget || _stop.IsCancellationRequested) return null;
        if (pending.Count == 0) return Settle(moved);
        var circuit = pending[0];
        var rest = pending.GetRange(1, pending.Count - 1);
        foreach (var top in _tops[circuit].Where(top => IsMeant(circuit, top)))
        {
            var stays = top == _board.Schedule.Circuits[circuit].Space;
            if (stays && (MustMove(circuit) || _board.Groups[circuit] < 0)) continue;
            if (PlaceAt(circuit, top, rest, moved + (stays || MustMove(circuit) ? 0 : 1)) is { } found) return found;
        }
        return null;
    }

    private ImmutableArray<Hop>? PlaceAt(int circuit, SpaceNumber top, List<int> rest, int moved)
    {
        var pushed = _board.SlotsOf(circuit, top).Select(slot => _owner[slot]).Where(other => other >= 0).Distinct().ToList();
        if (pushed.Exists(other => _placed.ContainsKey(other) || _board.Staying[other] is not null)) return null;
        var lifted = pushed.SelectMany(_board.Joined).Distinct().Where(other => !_placed.ContainsKey(other) && !rest.Contains(other)).ToList();
        foreach (var other in lifted) Lift(other);
        _placed[circuit] = top;
        _board.Take(_owner, circuit, top);
        var found = IsLawfulSoFar(circuit) ? Place([.. rest, .. lifted], moved) : null;
        _placed.Remove(circuit);
        Clear(circuit, top);
        foreach (var other in lifted) _board.Take(_owner, other, _board.Schedule.Circuits[other].Space);
        return found;
    }

    /// <summary>On the leg that the set asks for; else on its own, or anywhere if it shifts nothing.</summary>
    private bool IsMeant(int circuit, SpaceNumber top) => _phases.TryGetValue(circuit, out var phase)
        ? _board.PhaseAt(top) == phase
        : _loads.IsNeutral(circuit) || _board.PhaseAt(top) == _board.PhaseOf(circuit);

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
        if (_singles.Seat(_wanted, _owner, _budget - moved) is { } hops)
            return [.. _placed.Where(pair => pair.Value != _board.Schedule.Circuits[pair.Key].Space).Select(pair => new Hop(pair.Key, pair.Value)), .. hops];
        return moved + _wanted.Count < _budget ? MakeRoom(moved) : null;
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
            if (_tops[circuit].Length == 0 || _placed.ContainsKey(circuit) || !CanMakeRoom(circuit)) continue;
            var lifted = _board.Joined(circuit).ToList();
            foreach (var member in lifted) Lift(member);
            var found = Place(lifted, moved);
            foreach (var member in lifted) _board.Take(_owner, member, _board.Schedule.Circuits[member].Space);
            if (found is not null) return found;
        }
        return null;
    }
}
