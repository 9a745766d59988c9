using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Balance;

/// <summary>Lawful panels by chance: single breakers, two and three poles, shared neutrals, tandems, spares, fixed ones.</summary>
internal sealed class PanelByChance(int number, PanelSystem system, int spaces)
{
    private const int Tries = 40;

    private readonly List<Circuit> _circuits = [];
    private uint _state = (uint)((number * 7919) + 17);

    /// <summary>As many breakers as asked for, as far as they find room; loads are whole tens of VA.</summary>
    public static Schedule Of(int number, PanelSystem system, int spaces, int breakers)
    {
        var panel = new PanelByChance(number, system, spaces);
        for (var tries = 0; panel._circuits.Count < breakers && tries < breakers * Tries; tries++) panel.Hang();
        return new Schedule
        {
            Panel = new Panel { System = system, Spaces = spaces, TandemSpaces = [.. Enumerable.Range(spaces - 3, 4)] },
            Circuits = Sketch.Numbered([.. panel._circuits]),
            Scenarios = [panel.Scenario("Day"), panel.Scenario("Night"), new Scenario { Name = "All", RunsAll = true }],
        };
    }

    /// <summary>Such a panel with loads of every kind in turn, by chance continuous, so that demand factors meet.</summary>
    public static Schedule OfManyKinds(int number, PanelSystem system, int spaces, int breakers)
    {
        var schedule = Of(number, system, spaces, breakers);
        var die = new PanelByChance(number, system, spaces);
        var kinds = Enum.GetValues<LoadKind>();
        return schedule with
        {
            Circuits = [.. schedule.Circuits.Select(circuit => circuit with
            {
                Loads = [.. circuit.Loads.Select(load => load with { Kind = kinds[die.Die(kinds.Length)], Count = 1 + die.Die(3), Continuous = die.Die(3) == 0 })],
            })],
        };
    }

    private Scenario Scenario(string name) => new()
    {
        Name = name,
        Running = [.. _circuits.Where(_ => Die(2) == 0).Select(circuit => circuit.Id!)],
    };

    private void Hang()
    {
        var top = Die(spaces) + 1;
        switch (Die(10))
        {
            case 0 or 1 when system.MostPoles > 1:
                Add(Shaped(new SpaceNumber(top), 2 + Die(system.MostPoles - 1)));
                break;
            case 2 when system.MostPoles > 1:
                Pair(top);
                break;
            case 3 when top > spaces - 4:
                Add(OnePole(new SpaceNumber(top, (SpaceHalf)(1 + Die(2)))));
                break;
            default:
                Add(OnePole(new SpaceNumber(top)) with { IsSpare = Die(9) == 0, Fixed = Die(12) == 0 });
                break;
        }
    }

    private Circuit Shaped(SpaceNumber top, int poles) => OnePole(top) with
    {
        Breaker = new Breaker(20.A, poles),
        Loads = Die(3) == 0
            ? [Sketch.Of(Size()), Sketch.Of(Size()) with { Across = Across.LineToNeutral, Pole = 1 + Die(poles) }]
            : [Sketch.Of(Size())],
    };

    /// <summary>Two hots and one neutral, side by side.</summary>
    private void Pair(int top)
    {
        var name = $"shared-{_circuits.Count}";
        var (upper, lower) = (Joined(top, name), Joined(top + 2, name));
        if (Fits(upper) && Fits(lower)) _circuits.AddRange([upper, lower with { Id = $"c{_circuits.Count + 1}" }]);
    }

    private Circuit Joined(int space, string name) => OnePole(new SpaceNumber(space)) with { Multiwire = name, Tied = true };

    private Circuit OnePole(SpaceNumber space) => Sketch.OnePole(1, Sketch.Of(Size())) with { Space = space, Id = $"c{_circuits.Count}" };

    private void Add(Circuit circuit)
    {
        if (Fits(circuit)) _circuits.Add(circuit);
    }

    private bool Fits(Circuit circuit) => circuit.Spaces.All(space =>
        space.Number <= spaces && !_circuits.Exists(other => other.Spaces.Any(space.Overlaps)));

    private VoltAmperes Size() => (10 * (1 + Die(180))).VA;

    private int Die(int sides)
    {
        _state = unchecked((_state * 1664525) + 1013904223);
        return (int)((_state >> 8) % (uint)sides);
    }
}
