using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Demand.Parts;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Methods;

/// <summary>220.83: what is there and what is added, through one tier; the larger of heating and cooling in full.</summary>
/// <remarks>
/// Heating and cooling that were there before count in full, too: 220.83(A) does not say how, and of the readings in use this is the
/// one that asks for most.
/// </remarks>
public sealed class DwellingExisting : DemandMethod
{
    private static readonly TieredFactor Tiers = new(ExistingDwelling.Tiers);

    public override DemandMethodName Name => DemandMethodName.DwellingExisting;

    public override LackingFigure? Lacks(DemandBasis basis) => FloorArea(basis);

    public override DemandWorksheet Work(DemandCase demand)
    {
        var counted = CountedLoads.Of(demand);
        var section = SectionFor(counted);
        var many = ManyHeaters(counted);
        var climate = ClimateOf(counted, many, section);
        var lighting = GeneralLighting.Of(demand, climate.Chosen, section);
        var general = GeneralLoads.Of(lighting, many, section.In(demand.Edition));
        return new DemandWorksheet(Name, lighting.Counted.Loads, [.. Tiers.Apply(general), .. climate.Lines])
        {
            LeftOut = lighting.Counted.LeftOut,
            Given = lighting.Given,
            NeutralLines = StandardDwelling.Of(demand).Lines,
            AddsLargestMotor = false,
        };
    }

    private static CodeSection SectionFor(CountedLoads counted) =>
        counted.Kinds(LoadKind.SpaceHeat, LoadKind.Cooling, LoadKind.HeatPump).Any(load => load.Load.Added)
            ? ExistingDwelling.WithClimate
            : ExistingDwelling.WithoutClimate;

    /// <summary>Four or more separately controlled heaters count with all other loads.</summary>
    private static ImmutableArray<PlacedLoad> ManyHeaters(CountedLoads counted)
    {
        ImmutableArray<PlacedLoad> own = [.. counted.Kinds(LoadKind.SpaceHeat).Where(load => !load.Load.Supplementary)];
        return own.Sum(load => (long)load.Load.Count) < ExistingDwelling.Many ? [] : own;
    }

    /// <summary>Those that are not counted with all other loads.</summary>
    private static IEnumerable<PlacedLoad> Heaters(CountedLoads counted, ImmutableArray<PlacedLoad> many) =>
        counted.Kinds(LoadKind.SpaceHeat).Where(load => many.Length == 0 || load.Load.Supplementary);

    private static Climate ClimateOf(CountedLoads counted, ImmutableArray<PlacedLoad> many, CodeSection section)
    {
        ClimateShare Share(string label, ImmutableArray<PlacedLoad> loads) => new(label, loads, Percent.Whole, section);
        var pumps = Share("Heat pumps", counted.Kinds(LoadKind.HeatPump));
        var heat = Share("Space heating", [.. Heaters(counted, many)]);
        var cooling = Share("Cooling", counted.Kinds(LoadKind.Cooling));
        return new Climate(counted, [pumps, heat], [pumps, cooling]);
    }
}
