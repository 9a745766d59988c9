using System.Collections.Immutable;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Demand.Parts;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand.Methods;

/// <summary>Article 220 Part III for other than dwellings: tiers for receptacles, factors for kitchens, all else in full.</summary>
public sealed class NonDwelling : DemandMethod
{
    private static readonly TieredFactor Tiers = new(ReceptacleTiers.Rows);

    private static readonly ImmutableArray<LoadKind> InFullKinds =
    [
        .. Enum.GetValues<LoadKind>().Except([LoadKind.Receptacle, LoadKind.Kitchen, LoadKind.Ev]),
    ];

    public override DemandMethodName Name => DemandMethodName.NonDwelling;

    public override DemandWorksheet Work(DemandCase demand)
    {
        var counted = CountedLoads.Of(demand);
        return new DemandWorksheet(Name, counted.Loads, [.. Lines(counted)]) { LeftOut = counted.LeftOut };
    }

    private static IEnumerable<DemandLine> Lines(CountedLoads counted) =>
    [
        .. Receptacles(counted), .. InFull.Lines(counted, InFullKinds), .. Kitchens.Lines(counted),
        .. VehicleOutlets.Lines(counted),
    ];

    private static IEnumerable<DemandLine> Receptacles(CountedLoads counted)
    {
        var loads = counted.Kinds(LoadKind.Receptacle);
        return loads.Length == 0 ? [] : Tiers.Apply(DemandCategory.Of(
            "Receptacles", counted.System, loads, ReceptacleTiers.Section.In(counted.Edition)));
    }
}
