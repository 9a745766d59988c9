using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What a branch circuit loses from the panel to its farthest load, with all of its loads there.</summary>
/// <param name="Run">Its wire.</param>
/// <param name="Impedance">Of the wire at the loads' power factor.</param>
/// <param name="Lost">On the leg, or the pair of legs, that loses most.</param>
/// <param name="Share">Of line to neutral; of line to line where nothing is connected to neutral.</param>
/// <param name="OfFeeder">What the feeder loses on these legs; nothing where that is not known.</param>
public sealed record BranchDrop(WireRun Run, OhmsPerKilofoot Impedance, Volts Lost, Percent Share, Percent? OfFeeder)
{
    /// <summary>From the feeder's source to the load; nothing where the feeder's part is not known.</summary>
    public Percent? WithFeeder => OfFeeder is { } feeder ? new Percent(Share.Value + feeder.Value) : null;

    /// <summary>Nothing for a size that the tables do not have, and for no load at all.</summary>
    public static BranchDrop? Of(WireRun run, IReadOnlyList<PlacedLoad> loads, PanelSystem system, VoltageDrop? feeder)
    {
        var factor = MeanPowerFactor.Of(loads);
        if (EffectiveImpedance.Of(run.Conductor, run.Conduit, factor) is not { } impedance)
            return null;
        var legs = LegSum.Of(system, loads);
        return IsLineToLine(loads, out var pair)
            ? LineToLine(run, impedance, legs, pair, feeder)
            : ToNeutral(run, impedance, legs, feeder);
    }

    /// <summary>Every load between the same two legs: out on one, back on the other.</summary>
    private static bool IsLineToLine(IReadOnlyList<PlacedLoad> loads, out Placement pair)
    {
        pair = loads[0].Placement;
        var legs = pair.Legs;
        return legs.Length == 2 && loads.All(load => load.Placement.Legs.SequenceEqual(legs));
    }

    private static BranchDrop LineToLine(
        WireRun run, OhmsPerKilofoot impedance, LegLoads legs, Placement pair, VoltageDrop? feeder)
    {
        var lost = new Volts(2 * legs.AmperesOn(pair.Legs[0]).Value * run.Ohms(impedance));
        Percent? before = feeder is null ? null : new Percent(pair.Legs.Average(leg => feeder.Legs[leg].Share.Value));
        return new BranchDrop(run, impedance, lost, new Percent(100 * lost.Value / pair.Volts.Value), before);
    }

    /// <summary>A lift of the feeder's lighter leg is not counted on: it goes when the heavier one rests.</summary>
    private static BranchDrop ToNeutral(WireRun run, OhmsPerKilofoot impedance, LegLoads legs, VoltageDrop? feeder)
    {
        var own = legs.System.Legs.Where(leg => legs.VoltAmperesOn(leg).Value > 0).ToArray();
        var lost = new Volts(own.Select(leg => DropCurrent.On(leg, legs, SourceArrangement.OneUnit).Sum.Value)
            .DefaultIfEmpty().Max() * run.Ohms(impedance));
        Percent? before = feeder is null
            ? null
            : new Percent(own.Select(leg => feeder.Legs[leg].Share.Value).Append(0).Max());
        return new BranchDrop(
            run, impedance, lost, new Percent(100 * lost.Value / legs.System.LineToNeutral.Value), before);
    }
}
