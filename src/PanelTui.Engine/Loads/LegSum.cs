using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Loads;

/// <summary>Sums of what sits on the legs.</summary>
public static class LegSum
{
    public static LegLoads Of(PanelSystem system, IEnumerable<LegLoads> parts) =>
        parts.Aggregate(LegLoads.None(system), (sum, part) => sum + part);

    public static LegLoads Of(PanelSystem system, IEnumerable<PlacedLoad> loads) =>
        Of(system, loads.Select(load => load.Legs));
}
