using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>How the connected load, its legs, its neutral and its imbalance come about.</summary>
public static class ConnectedDerivations
{
    public static Derivation WhyConnected(this ConnectedLoad connected) => new(
        FigureNames.Connected,
        "Connected load",
        [
            .. connected.Loads.Select(load => load.Step(connected.Edition)),
            Sum("All of them", connected.Total),
        ]);

    public static Derivation WhyLegs(this ConnectedLoad connected) => new(
        FigureNames.Legs, "Connected load on each leg", [.. LegSteps.Of(connected.Legs)]);

    public static Derivation WhyNeutral(this ConnectedLoad connected) => new(
        FigureNames.Neutral,
        "Neutral current with everything on",
        [
            .. from leg in connected.Legs.System.Legs
               let current = connected.Legs.ToNeutral[leg] / connected.Legs.System.LineToNeutral
               select new DerivationStep($"Line to neutral on {leg}", current.Value, "A", Citation.Arithmetic),
            new DerivationStep(NeutralSum(connected), connected.Neutral.Value, "A", Citation.Arithmetic),
        ]);

    public static Derivation WhyImbalance(this ConnectedLoad connected)
    {
        var legs = connected.Legs.System.Legs;
        var mean = connected.Total / legs.Length;
        var deviation = Imbalance.LargestDeviation(legs.Select(leg => connected.VoltAmperesOn(leg).Value), mean.Value);
        return new Derivation(
            FigureNames.Imbalance,
            "Imbalance of the connected load",
            [
                .. legs.Select(leg => Sum($"Leg {leg}", connected.VoltAmperesOn(leg))),
                Sum("Mean of the legs", mean),
                Sum("Largest deviation from it", new VoltAmperes(deviation)),
                new DerivationStep(
                    $"Imbalance: {Imbalance.Definition}", connected.Imbalance.Value, "%", Imbalance.Cite),
            ]);
    }

    private static DerivationStep Sum(string label, VoltAmperes power) =>
        new(label, power.Value, "VA", Citation.Arithmetic);

    private static string NeutralSum(ConnectedLoad connected) => (connected.Arrangement, connected.Legs.System) switch
    {
        (_, { Legs.Length: 1 }) => "The neutral carries what the leg carries",
        (SourceArrangement.InPhase, _) => "The legs are in phase: their currents add",
        (SourceArrangement.Split or SourceArrangement.OneUnit, { IsWye: true }) => "Phasor sum, the legs 120 degrees apart",
        (SourceArrangement.Split or SourceArrangement.OneUnit, _) => "Difference, the legs 180 degrees apart",
        _ => throw Unnamed.Of(connected.Arrangement),
    };
}
