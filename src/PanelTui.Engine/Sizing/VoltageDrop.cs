using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What a leg loses on the way: its currents, the volts, and the share of line to neutral. A lift is negative.</summary>
public readonly record struct LegDrop(DropCurrent Current, Volts Lost, Percent Share);

/// <summary>What a feeder, or a branch circuit with a neutral, loses on its way.</summary>
/// <remarks>The neutral is taken to be as large as the line conductors.</remarks>
public sealed record VoltageDrop(
    Conductor Conductor, Conduit Conduit, Feet Length, PowerFactor Factor, OhmsPerKilofoot Impedance, PerLeg<LegDrop> Legs)
{
    /// <summary>On the leg that loses most.</summary>
    public Percent Worst => Legs.Values.Max(leg => leg.Share);

    public Leg WorstLeg
    {
        get
        {
            var legs = Legs;
            return legs.Legs.MaxBy(leg => legs[leg].Share);
        }
    }

    /// <summary>Nothing for a size that the tables do not have.</summary>
    public static VoltageDrop? Of(WireRun run, LegLoads loads, PowerFactor factor, SourceArrangement arrangement)
    {
        if (EffectiveImpedance.Of(run.Conductor, run.Conduit, factor) is not { } impedance)
            return null;
        var ohms = run.Ohms(impedance);
        var system = loads.System;
        return new VoltageDrop(run.Conductor, run.Conduit, run.Length, factor, impedance, PerLeg.Of(system, On));

        LegDrop On(Leg leg)
        {
            var current = DropCurrent.On(leg, loads, arrangement);
            var lost = new Volts(current.Sum.Value * ohms);
            return new LegDrop(current, lost, new Percent(100 * lost.Value / system.LineToNeutral.Value));
        }
    }
}
