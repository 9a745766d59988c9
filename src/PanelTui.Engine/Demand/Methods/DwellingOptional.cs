using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Demand.Parts;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Methods;

/// <summary>220.82: all general loads of a dwelling through one tier, and the larger of heating and cooling.</summary>
public sealed class DwellingOptional : DemandMethod
{
    private static readonly TieredFactor Tiers = new(OptionalDwelling.GeneralTiers);

    public override DemandMethodName Name => DemandMethodName.DwellingOptional;

    public override LackingFigure? Lacks(DemandBasis basis) => FloorArea(basis);

    public override DemandWorksheet Work(DemandCase demand)
    {
        var climate = ClimateOf(CountedLoads.Of(demand));
        var lighting = GeneralLighting.Of(demand, climate.Chosen, OptionalDwelling.GeneralSection);
        var general = GeneralLoads.Of(lighting, [], OptionalDwelling.GeneralSection.In(demand.Edition));
        return new DemandWorksheet(Name, lighting.Counted.Loads, [.. Tiers.Apply(general), .. climate.Lines])
        {
            LeftOut = lighting.Counted.LeftOut,
            Given = lighting.Given,
            NeutralLines = StandardDwelling.Of(demand).Lines,
            AddsLargestMotor = false,
        };
    }

    private static Climate ClimateOf(CountedLoads counted)
    {
        var pumps = new ClimateShare(
            "Heat pumps", counted.Kinds(LoadKind.HeatPump), Percent.Whole, OptionalDwelling.HeatPumpSection);
        var cooling = new ClimateShare(
            "Cooling", counted.Kinds(LoadKind.Cooling), Percent.Whole, OptionalDwelling.CoolingSection);
        return new Climate(counted, [pumps, .. Heating(counted.Kinds(LoadKind.SpaceHeat))], [pumps, cooling]);
    }

    /// <summary>Each load, times its count, is taken to have a control of its own.</summary>
    private static IEnumerable<ClimateShare> Heating(ImmutableArray<PlacedLoad> heat)
    {
        var storage = heat.Where(load => load.Load.Continuous).ToImmutableArray();
        var with = heat.Where(load => load.Load is { Continuous: false, Supplementary: true }).ToImmutableArray();
        var own = heat.Where(load => load.Load is { Continuous: false, Supplementary: false }).ToImmutableArray();
        var units = own.Sum(load => (long)load.Load.Count);
        yield return new ClimateShare(
            "Heat that is on for hours", storage, Percent.Whole, OptionalDwelling.StorageSection);
        yield return new ClimateShare(
            "Heat with the heat pump", with, OptionalDwelling.Supplementary, OptionalDwelling.SupplementarySection);
        yield return units < OptionalDwelling.Many
            ? new ClimateShare("Heaters, fewer than four", own, OptionalDwelling.FewHeaters, Few)
            : new ClimateShare($"Heaters, {units} of them", own, OptionalDwelling.ManyHeaters, Many);
    }

    private static CodeSection Few => OptionalDwelling.FewHeatersSection;

    private static CodeSection Many => OptionalDwelling.ManyHeatersSection;
}
