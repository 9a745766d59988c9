using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What the calculated load asks of the feeder's conductors.</summary>
internal static class FeederLoad
{
    /// <summary>The worst leg with the largest motor's extra, continuous loads at 100 %.</summary>
    public static Amperes Calculated(DemandResult demand) => demand.Legs.System.Legs.Max(leg => On(leg, demand));

    public static VoltageDrop? Drop(WireRun run, DemandResult demand) =>
        VoltageDrop.Of(run, demand.Legs, MeanPowerFactor.Of(demand.Worksheet.Counted), demand.Arrangement);

    private static Amperes On(Leg leg, DemandResult demand) => demand.LargestMotorOn(leg) is { } motor
        ? (demand.Legs + (motor.OneOfThem * DemandResult.Extra)).AmperesOn(leg)
        : demand.Legs.AmperesOn(leg);
}
