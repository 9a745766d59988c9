using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>Sums of what sits on the legs.</summary>
public static class LegSum
{
    public static LegLoads Of(PanelSystem system, IEnumerable<LegLoads> parts)
    {
        var toNeutral = new VoltAmperes[system.Legs.Length];
        var toNext = new VoltAmperes[system.Legs.Length];
        var threePhase = VoltAmperes.Zero;
        foreach (var part in parts)
        {
            foreach (var leg in system.Legs)
            {
                toNeutral[(int)leg] += part.ToNeutral[leg];
                toNext[(int)leg] += part.ToNext[leg];
            }
            threePhase += part.ThreePhase;
        }
        return new LegLoads(system, OnLegs(system, toNeutral), OnLegs(system, toNext), threePhase);
    }

    public static LegLoads Of(PanelSystem system, IEnumerable<PlacedLoad> loads) =>
        Of(system, loads.Select(load => load.Legs));

    private static PerLeg<VoltAmperes> OnLegs(PanelSystem system, VoltAmperes[] powers) =>
        PerLeg.Of(system, leg => powers[(int)leg]);
}
