using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>A place for a breaker with a shape.</summary>
/// <param name="Phase">The leg of its top pole, as a number.</param>
/// <param name="Slots">The slots it takes.</param>
/// <param name="Singles">The single breakers that sit there today.</param>
internal sealed record ShapePlace(SpaceNumber Top, int Phase, int[] Slots, int[] Singles);

/// <summary>Every place of every breaker with a shape: those first that push the fewest others away.</summary>
internal sealed class ShapePlaces
{
    private readonly ShapePlace[][] _places;
    private readonly int[][] _own;

    public ShapePlaces(Board board)
    {
        var singleIn = new int[board.Spaces + 1];
        Array.Fill(singleIn, -1);
        foreach (var circuit in board.Schedule.Circuits.Where(circuit => board.IsSingle(circuit.Ordinal))) singleIn[circuit.Space.Number] = circuit.Ordinal;
        var movable = Enumerable.Range(0, board.Count).Select(circuit => board.Staying[circuit] is null && !board.IsSingle(circuit)).ToArray();
        _own = [.. board.Schedule.Circuits.Select(circuit => board.SlotsOf(circuit.Ordinal, circuit.Space).ToArray())];
        _places = [.. Enumerable.Range(0, board.Count).Select(circuit => movable[circuit] ? Of(board, circuit, singleIn) : [])];
    }

    /// <summary>None for a single breaker and for one that stays.</summary>
    public ShapePlace[] Of(int circuit) => _places[circuit];

    /// <summary>The slots a circuit has today.</summary>
    public int[] OwnSlots(int circuit) => _own[circuit];

    private static ShapePlace[] Of(Board board, int circuit, int[] singleIn) =>
    [
        .. board.TopsFor(circuit).Select(top => PlaceOf(board, circuit, top, singleIn))
            .OrderBy(place => place.Singles.Length + place.Slots.Count(slot => board.Owner[slot] >= 0 && board.Owner[slot] != circuit)),
    ];

    private static ShapePlace PlaceOf(Board board, int circuit, SpaceNumber top, int[] singleIn)
    {
        int[] slots = [.. board.SlotsOf(circuit, top)];
        return new ShapePlace(
            top,
            board.PhaseAt(top),
            slots,
            [.. slots.Select(slot => singleIn[(slot / Board.SlotsOfSpace) + 1]).Where(single => single >= 0).Distinct()]);
    }
}
