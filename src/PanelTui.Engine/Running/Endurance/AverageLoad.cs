using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>What loads take on the average: running power times duty.</summary>
public static class AverageLoad
{
    public static Watts Of(IEnumerable<PlacedLoad> loads) =>
        loads.Aggregate(Watts.Zero, (sum, load) => sum + Of(load));

    public static PerLeg<Watts> OnLegs(IEnumerable<PlacedLoad> loads, PanelSystem system) => PerLeg.Of(
        system, leg => loads.Aggregate(Watts.Zero, (sum, load) => sum + load.Placement.WattsOn(leg, Of(load))));

    /// <summary>All that are alike.</summary>
    public static Watts Of(PlacedLoad load) => load.RunningWatts * Bounded(load.Load.Duty);

    private static Percent Bounded(Percent duty) => new(Math.Clamp(duty.Value, 0, 100));
}
