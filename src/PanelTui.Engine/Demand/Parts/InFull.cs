using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>Loads that Part III counts at 100 %, a line for each kind.</summary>
internal static class InFull
{
    private static readonly CodeSection Lighting = Nec.FromMemory((2017, "Table 220.42"), (2023, "Table 220.45"));

    private static readonly CodeSection Motors = Nec.FromMemory("220.50");

    private static readonly CodeSection SpaceHeat = Nec.Section("220.51");

    private static readonly CodeSection Appliances = Nec.FromMemory("220.14(A)");

    public static IEnumerable<DemandLine> Lines(CountedLoads counted, params ImmutableArray<LoadKind> kinds) =>
        from kind in kinds
        let loads = counted.Kinds(kind)
        where loads.Length > 0
        let cite = SectionFor(kind).In(counted.Edition)
        select DemandLine.Of(DemandCategory.Of(kind.Category, counted.System, loads, cite), Percent.Whole);

    private static CodeSection SectionFor(LoadKind kind) => kind switch
    {
        LoadKind.Lighting => Lighting,
        LoadKind.SpaceHeat => SpaceHeat,
        LoadKind.Motor or LoadKind.Cooling or LoadKind.HeatPump => Motors,
        LoadKind.Receptacle or LoadKind.SmallAppliance or LoadKind.Laundry or LoadKind.Range
            or LoadKind.WallOven or LoadKind.Cooktop or LoadKind.Dryer or LoadKind.Appliance
            or LoadKind.WaterHeater or LoadKind.Ev or LoadKind.Kitchen or LoadKind.Other => Appliances,
        _ => throw Unnamed.Of(kind),
    };
}
