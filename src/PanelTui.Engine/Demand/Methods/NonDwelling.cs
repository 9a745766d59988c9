using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Methods;

/// <summary>Article 220 Part III for other than dwellings: tiers for receptacles, factors for kitchens, all else in full.</summary>
public sealed class NonDwelling : DemandMethod
{
    private static readonly CodeSection Lighting = Nec.FromMemory((2017, "Table 220.42"), (2023, "Table 220.45"));

    private static readonly CodeSection Motors = Nec.FromMemory("220.50");

    private static readonly CodeSection SpaceHeat = Nec.FromMemory("220.51");

    private static readonly CodeSection Appliances = Nec.FromMemory("220.14(A)");

    private static readonly TieredFactor Receptacles = new(ReceptacleTiers.Rows);

    public override DemandMethodName Name => DemandMethodName.NonDwelling;

    public override DemandWorksheet Work(DemandCase demand)
    {
        var counted = Noncoincident.Largest(demand.Loads);
        return new DemandWorksheet(Name, counted, [.. Lines(demand, counted)])
        {
            LeftOut = Noncoincident.LeftOut(demand.Loads),
        };
    }

    private static IEnumerable<DemandLine> Lines(DemandCase demand, ImmutableArray<PlacedLoad> counted) =>
        from kind in Enum.GetValues<LoadKind>()
        let loads = counted.Where(load => load.Load.Kind == kind).ToImmutableArray()
        where loads.Length > 0
        let category = new DemandCategory(Label(kind), demand.System, loads, SectionFor(kind).In(demand.Edition))
        from line in kind switch
        {
            LoadKind.Receptacle => Receptacles.Apply(category),
            LoadKind.Kitchen => Kitchen(loads, category),
            _ => [DemandLine.Of(category, Percent.Whole)],
        }
        select line;

    /// <summary>The table's factor, unless that falls below the two largest units together: then these in full.</summary>
    private static IEnumerable<DemandLine> Kitchen(ImmutableArray<PlacedLoad> loads, DemandCategory category)
    {
        var units = loads.SelectMany(load => Enumerable.Repeat(load.Size.Each.Value, Math.Clamp(load.Load.Count, 0, 2)));
        var twoLargest = new VoltAmperes(units.OrderDescending().Take(2).Sum());
        var factor = KitchenFactors.For((int)Math.Min(loads.Sum(load => (long)load.Load.Count), int.MaxValue));
        if (category.Connected.Total * factor >= twoLargest)
            return [DemandLine.Of(category, factor)];
        var floor = new TieredFactor([new(twoLargest, Percent.Whole), new(VoltAmperes.Unlimited, Percent.Zero)]);
        return floor.Apply(category with { Label = $"{category.Label}, never below its two largest units" });
    }

    private static CodeSection SectionFor(LoadKind kind) => kind switch
    {
        LoadKind.Lighting => Lighting,
        LoadKind.Receptacle => ReceptacleTiers.Section,
        LoadKind.Kitchen => KitchenFactors.Section,
        LoadKind.SpaceHeat => SpaceHeat,
        LoadKind.Motor or LoadKind.Cooling or LoadKind.HeatPump => Motors,
        _ => Appliances,
    };

    private static string Label(LoadKind kind) => kind switch
    {
        LoadKind.Lighting => "Lighting",
        LoadKind.Receptacle => "Receptacles",
        LoadKind.SmallAppliance => "Small-appliance circuits",
        LoadKind.Laundry => "Laundry circuits",
        LoadKind.Range => "Ranges",
        LoadKind.WallOven => "Wall ovens",
        LoadKind.Cooktop => "Cooktops",
        LoadKind.Dryer => "Dryers",
        LoadKind.Appliance => "Appliances",
        LoadKind.WaterHeater => "Water heaters",
        LoadKind.SpaceHeat => "Space heating",
        LoadKind.Cooling => "Cooling",
        LoadKind.HeatPump => "Heat pumps",
        LoadKind.Motor => "Motors",
        LoadKind.Ev => "Vehicle charging",
        LoadKind.Kitchen => "Kitchen equipment",
        _ => "Other loads",
    };
}
