using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The currents in line with a leg's voltage: its own, and the neutral's with its sign.</summary>
/// <remarks>
/// The neutral's counts for the heavier leg and against the lighter one, whose voltage it lifts. Each current at unity power
/// factor; what the power factor changes is in the impedance.
/// </remarks>
public readonly record struct DropCurrent(Amperes Line, Amperes Neutral)
{
    private const decimal Root3 = 1.7320508075688772935274463415m;

    public Amperes Sum => Line + Neutral;

    public static DropCurrent On(Leg leg, LegLoads loads, SourceArrangement arrangement)
    {
        var volts = loads.System.LineToNeutral;
        var own = loads.ToNeutral[leg] / volts;
        var others = Amperes.Zero;
        foreach (var other in loads.System.Legs)
            others += other == leg ? Amperes.Zero : loads.ToNeutral[other] / volts;
        return new DropCurrent(LineOn(leg, loads), own + (others * Toward(loads.System, arrangement)));
    }

    /// <summary>How much of another leg's current to neutral runs in line with this one: the cosine of the angle between.</summary>
    private static decimal Toward(PanelSystem system, SourceArrangement arrangement) =>
        arrangement == SourceArrangement.InPhase ? 1
        : system.IsWye ? -0.5m
        : -1;

    /// <summary>On a wye a line-to-line current stands 30 degrees off the leg, a balanced one in line with it.</summary>
    private static Amperes LineOn(Leg leg, LegLoads loads)
    {
        if (!loads.System.IsWye)
            return loads.VoltAmperesOn(leg) / loads.System.LineToNeutral;
        var balanced = loads.ThreePhase.Value / Root3;
        var between = ((loads.VoltAmperesOn(leg) - loads.ToNeutral[leg]).Value - (loads.ThreePhase.Value / 3)) * Root3;
        return (loads.ToNeutral[leg] / loads.System.LineToNeutral)
            + (new VoltAmperes(balanced + between) / loads.System.LineToLine!.Value);
    }
}
