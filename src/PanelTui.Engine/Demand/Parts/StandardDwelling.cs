using System.Collections.Immutable;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>The lines of a dwelling by Article 220 Part III: a method of its own, and the neutral of the optional ones.</summary>
internal sealed record StandardDwelling(GeneralLighting Lighting, CountedLoads Counted, ImmutableArray<DemandLine> Lines)
{
    private static readonly TieredFactor Tiers = new(DwellingLighting.Tiers);

    private static readonly ImmutableArray<LoadKind> InFullKinds =
        [LoadKind.SpaceHeat, LoadKind.Cooling, LoadKind.HeatPump, LoadKind.Motor, LoadKind.Other];

    public static StandardDwelling Of(DemandCase demand)
    {
        var lighting = GeneralLighting.Of(demand, CountedLoads.Of(demand).HeatingOrCooling(), DwellingLighting.TierSection);
        var counted = lighting.Counted;
        return new StandardDwelling(
            lighting,
            counted,
            [
                .. Tiers.Apply(lighting.Category),
                .. FastenedAppliances.Lines(counted),
                .. Dryers.Lines(counted),
                .. Cooking.Lines(counted),
                .. InFull.Lines(counted, InFullKinds),
                .. VehicleOutlets.Lines(counted),
            ]);
    }
}
