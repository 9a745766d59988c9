using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>All that is not heating or cooling, at its nameplate, as the optional methods sum it before their tier.</summary>
internal static class GeneralLoads
{
    private static readonly ImmutableArray<LoadKind> Climate = [LoadKind.SpaceHeat, LoadKind.Cooling, LoadKind.HeatPump];

    /// <param name="lighting">Goes in as its own category: by area or as connected.</param>
    /// <param name="alsoHeat">Heaters that the method counts with all other loads.</param>
    /// <param name="cite">The section of the tier.</param>
    public static DemandCategory Of(
        GeneralLighting lighting, ImmutableArray<Loads.PlacedLoad> alsoHeat, Citation cite)
    {
        var counted = lighting.Counted;
        var others = counted.Loads
            .Where(load => !Climate.Contains(load.Load.Kind) && !GeneralLighting.Kinds.Contains(load.Load.Kind))
            .Concat(alsoHeat)
            .ToImmutableArray();
        var lit = lighting.Given.Length == 0 ? "lighting as connected" : "lighting by area";
        var category = lighting.Category with { Label = $"General loads, {lit}", Cite = cite };
        return category.With(DemandCategory.Of("", counted.System, others, cite));
    }
}
