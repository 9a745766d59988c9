using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>Equipment that charges vehicles, each at its nameplate or the edition's least.</summary>
internal static class VehicleOutlets
{
    public static IEnumerable<DemandLine> Lines(CountedLoads counted)
    {
        var loads = counted.Kinds(LoadKind.Ev);
        if (loads.Length == 0)
            yield break;
        var cite = VehicleCharging.SectionIn(counted.Edition).In(counted.Edition);
        var raised = loads.Any(load => Each(load, counted) > load.Size.Each);
        var label = raised ? $"Vehicle charging, {VehicleCharging.Floor} each or more" : "Vehicle charging";
        var category = DemandCategory.Of(label, counted.System, loads, cite);
        var line = DemandLine.Figure(category, LegSum.Of(counted.System, loads.Select(load => Legs(load, counted))));
        yield return line with
        {
            Continuous = LegSum.Of(
                counted.System, loads.Where(load => load.Load.Continuous).Select(load => Legs(load, counted))),
        };
    }

    private static LegLoads Legs(PlacedLoad load, CountedLoads counted) =>
        load.Placement.Put(new VoltAmperes(Bounded.Product(Each(load, counted).Value, load.Load.Count)));

    private static VoltAmperes Each(PlacedLoad load, CountedLoads counted) =>
        VehicleCharging.Each(load.Size.Each, counted.Edition);
}
