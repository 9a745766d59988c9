using System.Collections.Immutable;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>Kitchen equipment other than in dwellings: the table's factor, and no less than the two largest units.</summary>
internal static class Kitchens
{
    public static IEnumerable<DemandLine> Lines(CountedLoads counted)
    {
        var loads = counted.Kinds(LoadKind.Kitchen);
        if (loads.Length == 0)
            return [];
        var number = loads.Sum(load => (long)load.Load.Count);
        var category = DemandCategory.Of(
            $"Kitchen equipment, {number} {(number == 1 ? "unit" : "units")}", counted.System, loads, KitchenFactors.Section.In(counted.Edition));
        var factor = KitchenFactors.For((int)Math.Min(number, int.MaxValue));
        var twoLargest = TwoLargest(loads);
        return category.Connected.Total * factor >= twoLargest
            ? [DemandLine.Of(category, factor)]
            : [DemandLine.Figure(category with { Label = $"{category.Label}, the two largest" }, twoLargest)];
    }

    private static VoltAmperes TwoLargest(ImmutableArray<PlacedLoad> loads) => new(
        loads.SelectMany(load => Enumerable.Repeat(load.Size.Each.Value, Math.Clamp(load.Load.Count, 0, 2)))
            .OrderDescending().Take(2).Sum());
}
