using System.Collections.Immutable;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Demand.Parts;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Methods;

/// <summary>220.87: 125 % of the highest measured demand, and every load that is added, in full.</summary>
/// <remarks>Each leg, and the neutral, is taken to carry what the busier leg was measured to carry.</remarks>
public sealed class Measured : DemandMethod
{
    private static readonly ImmutableArray<LoadKind> InFullKinds =
        [.. Enum.GetValues<LoadKind>().Except([LoadKind.Ev])];

    public override DemandMethodName Name => DemandMethodName.Measured;

    public override LackingFigure? Lacks(DemandBasis basis) => basis switch
    {
        { MeasuredPeak: null } => new LackingFigure(
            "demand.measured_peak", "demand, feeder and transfer ratings are left out",
            "Give the highest demand of a year, or of 30 days in 15-minute steps, on the busier leg."),
        { MeasuredDays: null } => new LackingFigure(
            "demand.measured_days", "the measured peak is taken as it stands",
            "Say over how many days the peak was measured: a year, or at least 30 days in 15-minute steps."),
        _ => null,
    };

    public override DemandWorksheet? Work(DemandCase demand)
    {
        if (demand.Basis.MeasuredPeak is not { } peak)
            return null;
        var all = new CountedLoads(demand.System, demand.Edition, demand.Loads, []);
        var there = all.Without(
            demand.Loads.Where(load => !load.Load.Added), "within the measured peak", MeasuredDemand.Section.In(demand.Edition));
        var counted = there.LargestOfEachGroup();
        return new DemandWorksheet(Name, counted.Loads, [Existing(peak, demand), .. Added(counted)])
        {
            LeftOut = counted.LeftOut,
        };
    }

    private static DemandLine Existing(Amperes peak, DemandCase demand)
    {
        var power = new VoltAmperes(Bounded.Product(peak.Value, demand.System.LineToNeutral.Value));
        var category = DemandCategory.Of(
            $"Measured peak, {peak} on each leg", demand.System, [], MeasuredDemand.Section.In(demand.Edition)) with
        {
            Connected = LegLoads.None(demand.System) with { ToNeutral = PerLeg.Of(demand.System, _ => power) },
        };
        return DemandLine.Of(category, MeasuredDemand.OfThePeak);
    }

    private static IEnumerable<DemandLine> Added(CountedLoads counted) =>
        from line in InFull.Lines(counted, InFullKinds).Concat(VehicleOutlets.Lines(counted))
        select line with { Label = $"Added: {line.Label}" };
}
