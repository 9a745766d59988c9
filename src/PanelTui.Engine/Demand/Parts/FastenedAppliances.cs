using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>Appliances of a dwelling that are fastened in place, 220.53: water heaters, dishwashers, disposers and the like.</summary>
internal static class FastenedAppliances
{
    public static readonly ImmutableArray<LoadKind> Kinds =
        [LoadKind.Appliance, LoadKind.WaterHeater, LoadKind.Kitchen];

    public static IEnumerable<DemandLine> Lines(CountedLoads counted)
    {
        var loads = counted.Kinds([.. Kinds]);
        var large = loads.Where(load => IsLargeEnough(load, counted.Edition)).ToImmutableArray();
        var many = large.Sum(load => (long)load.Load.Count);
        if (loads.Length == 0)
            return [];
        if (many < ApplianceFactor.Least)
            return [DemandLine.Of(Category("Fastened appliances, fewer than four", loads, counted), Percent.Whole)];
        var small = loads.Where(load => !IsLargeEnough(load, counted.Edition)).ToImmutableArray();
        var reduced = DemandLine.Of(
            Category($"Fastened appliances, {many} of them", large, counted), ApplianceFactor.Factor);
        return small.Length == 0
            ? [reduced]
            : [reduced, DemandLine.Of(Category("Appliances below 1/4 hp and 500 W", small, counted), Percent.Whole)];
    }

    private static bool IsLargeEnough(PlacedLoad load, CodeEdition edition) =>
        !ApplianceFactor.HasLeastSize(edition)
        || (load.Load.Rating is LoadRating.InHorsepower motor
            ? motor.Output >= ApplianceFactor.LeastOutput
            : load.Size.Each.At(load.Load.PowerFactor) >= ApplianceFactor.LeastPower);

    private static DemandCategory Category(string label, ImmutableArray<PlacedLoad> loads, CountedLoads counted) =>
        DemandCategory.Of(label, counted.System, loads, ApplianceFactor.Section.In(counted.Edition));
}
