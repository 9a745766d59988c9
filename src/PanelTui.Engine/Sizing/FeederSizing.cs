using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What the feeder's overcurrent device has to be.</summary>
/// <remarks>The standard rating is nothing above the last one of the table, 6000 A.</remarks>
public sealed record FeederSizing(Amperes Required, Amperes? StandardOcpd, CodeEdition Edition)
{
    public static readonly CodeSection Section = Nec.Section("215.3");

    public static FeederSizing Of(DemandResult demand) => new(
        demand.MinimumAmpacity, StandardRatings.NextUp(demand.MinimumAmpacity, demand.Edition), demand.Edition);
}
