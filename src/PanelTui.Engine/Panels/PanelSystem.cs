using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>The supply system of a panel: its legs, its voltages, and the angle between its legs.</summary>
public sealed record PanelSystem
{
    /// <summary>One leg and a neutral at 120 V.</summary>
    public static readonly PanelSystem OneLeg = new("120 V 1ph 2W", 1, null, [0]);

    /// <summary>Two legs 180 degrees apart, from a centre-tapped winding or two stacked units.</summary>
    public static readonly PanelSystem SplitPhase = new("120/240 V 1ph 3W", 2, new Volts(240), [0, 180]);

    /// <summary>Two legs of a 208Y/120 V wye with its neutral: 120 degrees apart.</summary>
    public static readonly PanelSystem TwoLegsOfWye = new("120/208 V 1ph 3W", 2, new Volts(208), [0, 240]);

    /// <summary>A four-wire wye.</summary>
    public static readonly PanelSystem Wye = new("208Y/120 V 3ph 4W", 3, new Volts(208), [0, 240, 120]);

    public static readonly ImmutableArray<PanelSystem> All = [OneLeg, SplitPhase, TwoLegsOfWye, Wye];

    private readonly ImmutableArray<int> _degrees;

    private PanelSystem(string name, int legs, Volts? lineToLine, ImmutableArray<int> degrees)
    {
        Name = name;
        Legs = [.. Enumerable.Range(0, legs).Select(index => (Leg)index)];
        LineToLine = lineToLine;
        _degrees = degrees;
    }

    /// <summary>As the schedule file writes it, e.g. `120/240 V 1ph 3W`.</summary>
    public string Name { get; }

    public ImmutableArray<Leg> Legs { get; }

    /// <summary>120 V in all four systems.</summary>
    public Volts LineToNeutral { get; } = new(120);

    /// <summary>Nothing on a two-wire system, which has no second leg.</summary>
    public Volts? LineToLine { get; }

    /// <summary>Whether the legs stand 120 degrees apart, so that currents add as phasors.</summary>
    public bool IsWye => LineToLine?.Value == 208;

    /// <summary>A breaker can have no more poles than there are legs.</summary>
    public int MostPoles => Legs.Length;

    /// <summary>The angle of a leg's voltage to neutral, in degrees counter-clockwise from leg A.</summary>
    public int DegreesOf(Leg leg) => _degrees[(int)leg];

    /// <summary>Legs go down the rows in turn: A, B, A, B on two legs, A, B, C on three.</summary>
    /// <remarks>Common practice, no source: panelboards are built so, and spaces 1 and 2 share a leg.</remarks>
    public Leg LegOf(SpaceNumber space) => (Leg)(space.Row % Legs.Length);

    public override string ToString() => Name;
}
