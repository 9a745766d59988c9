using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Presentation;

/// <summary>What is asked of an endurance course.</summary>
/// <param name="From">The state of charge to begin with.</param>
/// <param name="StartHour">The hour of the day to begin with, 0 to 23.</param>
/// <param name="Charges">Whether the grid or the generator is there to charge; nothing for an outage.</param>
internal sealed record RunRequest(Percent From, int StartHour, bool? Charges)
{
    public static readonly RunRequest Usual = new(Percent.Whole, 0, null);

    /// <summary>In an outage the grid is gone, and a generator that charges is what is left.</summary>
    public bool ChargesIn(Schedule schedule) => Charges ?? schedule.Source?.Charging is { From: ChargingFrom.Generator };
}
