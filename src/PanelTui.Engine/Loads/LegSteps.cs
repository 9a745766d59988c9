using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>The steps from what sits between conductors to what each leg carries.</summary>
public static class LegSteps
{
    public static IEnumerable<DerivationStep> Of(LegLoads loads) =>
        loads.System.Legs.SelectMany(leg => On(leg, loads));

    private static IEnumerable<DerivationStep> On(Leg leg, LegLoads loads)
    {
        var balanced = loads.ThreePhase / 3;
        var between = loads.VoltAmperesOn(leg) - loads.ToNeutral[leg] - balanced;
        yield return Power($"{leg}: line to neutral", loads.ToNeutral[leg]);
        if (between.Value != 0)
            yield return Power($"{leg}: half of what is line to line", between);
        if (balanced.Value != 0)
            yield return Power($"{leg}: a third of what is three-phase", balanced);
        yield return Power($"Leg {leg}", loads.VoltAmperesOn(leg));
        yield return new DerivationStep(Current(leg, loads.System), loads.AmperesOn(leg).Value, "A", Citation.Arithmetic);
    }

    private static DerivationStep Power(string label, VoltAmperes power) =>
        new(label, power.Value, "VA", Citation.Arithmetic);

    private static string Current(Leg leg, PanelSystem system) => system.IsWye
        ? $"Leg {leg}, phasor sum at unity power factor"
        : $"Leg {leg}, VA / {system.LineToNeutral}";
}
