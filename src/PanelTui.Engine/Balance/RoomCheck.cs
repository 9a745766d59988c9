namespace PanelTui.Engine.Balance;

/// <summary>How many breakers that shift nothing have to make room at least, for slots to come out even on each leg.</summary>
internal sealed class RoomCheck
{
    private readonly int[] _open;
    private readonly int[] _yielding;

    public RoomCheck(Board board, LoadTable loads)
    {
        _open = new int[board.Legs];
        _yielding = new int[board.Legs];
        for (var space = 1; space <= board.Spaces; space++) _open[(space - 1) / 2 % board.Legs] += Board.SlotsOfSpace;
        foreach (var circuit in board.Schedule.Circuits)
        {
            foreach (var slot in board.SlotsOf(circuit.Ordinal, circuit.Space))
            {
                var leg = slot / Board.SlotsOfSpace / 2 % board.Legs;
                _open[leg]--;
                if (CanYield(board, loads, circuit.Ordinal)) _yielding[leg]++;
            }
        }
    }

    /// <summary>What has as many poles as there are legs takes one space of each wherever it sits.</summary>
    private static bool CanYield(Board board, LoadTable loads, int circuit)
    {
        var poles = board.Joined(circuit).Sum(member => board.Schedule.Circuits[member].Breaker.Poles);
        return board.Staying[circuit] is null && loads.IsNeutral(circuit) && poles % board.Legs != 0;
    }

    /// <summary>Moves beyond the set's own; -1 where there can be no room.</summary>
    public int ExtraMoves(ReadOnlySpan<short> one, ReadOnlySpan<short> other)
    {
        var extra = 0;
        for (var leg = 0; leg < _open.Length; leg++)
        {
            var over = one[leg] + other[leg] - Math.Max(0, _open[leg]);
            if (over <= 0) continue;
            if (over > _yielding[leg]) return -1;
            extra += (over + 1) / Board.SlotsOfSpace;
        }
        return extra;
    }
}
