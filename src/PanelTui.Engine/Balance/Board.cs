using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>The panel as places to be filled. Each space has two slots, its halves; a whole breaker takes both.</summary>
/// <remarks>
/// Single breakers (one pole, whole, joined to none) fit wherever a space of the leg is free, so they are counted; the others
/// have shapes, and are placed one by one.
/// </remarks>
internal sealed class Board
{
    public const int SlotsOfSpace = 2;

    private readonly bool[] _takesTandem;
    private readonly int[][] _joined;

    public Board(Schedule schedule)
    {
        Schedule = schedule;
        Legs = schedule.Panel.System.Legs.Length;
        Groups = Neighbours.Groups(schedule);
        _joined = [.. Groups.Select((group, circuit) => group < 0 ? [circuit] : Enumerable.Range(0, Count).Where(other => Groups[other] == group).ToArray())];
        Staying = StayingPut.Of(schedule, Groups);
        Spaces = schedule.Panel.Spaces;
        _takesTandem = new bool[Spaces + 1];
        foreach (var space in schedule.Panel.TandemSpaces.Where(space => space >= 1 && space <= Spaces)) _takesTandem[space] = true;
        Owner = new int[Spaces * SlotsOfSpace];
        Array.Fill(Owner, -1);
        foreach (var circuit in schedule.Circuits.Where(circuit => !IsSingle(circuit.Ordinal))) Take(Owner, circuit.Ordinal, circuit.Space);
    }

    public Schedule Schedule { get; }

    public int Legs { get; }

    public int Spaces { get; }

    /// <summary>The group of neighbours of each circuit, -1 for none.</summary>
    public int[] Groups { get; }

    /// <summary>Why a circuit stays; nothing for those that may move.</summary>
    public string?[] Staying { get; }

    /// <summary>Which circuit with a shape, or which that stays, has each slot today; -1 for none.</summary>
    public int[] Owner { get; }

    public int Count => Schedule.Circuits.Length;

    public bool IsSingle(int circuit) =>
        Staying[circuit] is null && Groups[circuit] < 0 && Schedule.Circuits[circuit] is { Breaker.Poles: 1, Space.IsHalf: false };

    /// <summary>The leg of a circuit's top pole, as a number.</summary>
    public int PhaseOf(int circuit) => PhaseAt(Schedule.Circuits[circuit].Space);

    public int PhaseAt(SpaceNumber space) => space.Row % Legs;

    /// <summary>The circuits that are joined to this one, itself among them.</summary>
    public int[] Joined(int circuit) => _joined[circuit];

    /// <summary>Every top space where a breaker of this shape may sit, with nothing regarded but what never moves.</summary>
    public IEnumerable<SpaceNumber> TopsFor(int circuit)
    {
        var breaker = Schedule.Circuits[circuit].Breaker;
        SpaceHalf[] halves = Schedule.Circuits[circuit].Space.IsHalf ? [SpaceHalf.A, SpaceHalf.B] : [SpaceHalf.Whole];
        for (var number = 1; number <= Spaces; number++)
        {
            foreach (var half in halves)
            {
                var top = new SpaceNumber(number, half);
                if (breaker.SpacesFrom(top).All(space => CanHold(space, circuit))) yield return top;
            }
        }
    }

    /// <summary>The slots that a circuit takes from a top space; those past the panel's end are left out.</summary>
    public IEnumerable<int> SlotsOf(int circuit, SpaceNumber top)
    {
        foreach (var space in Schedule.Circuits[circuit].Breaker.SpacesFrom(top))
        {
            if (space.Number > Spaces) continue;
            var first = (space.Number - 1) * SlotsOfSpace;
            if (space.Half != SpaceHalf.B) yield return first;
            if (space.Half != SpaceHalf.A) yield return first + 1;
        }
    }

    public void Take(int[] owner, int circuit, SpaceNumber top)
    {
        foreach (var slot in SlotsOf(circuit, top)) owner[slot] = circuit;
    }

    /// <summary>How many spaces of each leg hold nothing in this picture of owners.</summary>
    public int[] RoomOn(int[] owner)
    {
        var room = new int[Legs];
        for (var space = 1; space <= Spaces; space++)
            if (IsOpen(owner, space)) room[PhaseAt(new SpaceNumber(space))]++;
        return room;
    }

    public static bool IsOpen(int[] owner, int space) =>
        owner[(space - 1) * SlotsOfSpace] < 0 && owner[((space - 1) * SlotsOfSpace) + 1] < 0;

    private bool CanHold(SpaceNumber space, int circuit)
    {
        if (space.Number > Spaces || (space.IsHalf && !_takesTandem[space.Number])) return false;
        var first = (space.Number - 1) * SlotsOfSpace;
        return (space.Half == SpaceHalf.B || CanTake(first)) && (space.Half == SpaceHalf.A || CanTake(first + 1));
        bool CanTake(int slot) => Owner[slot] < 0 || Owner[slot] == circuit || Staying[Owner[slot]] is null;
    }
}
