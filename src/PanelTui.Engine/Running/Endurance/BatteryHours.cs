using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>How long a battery carries a load with nothing that charges it.</summary>
public static class BatteryHours
{
    /// <summary>Longer than a year is as good as for ever.</summary>
    private const decimal MostHours = 8_760;

    private const decimal Most = 1_000_000_000;

    extension(Battery battery)
    {
        /// <summary>Between a state of charge and the reserve; nothing where that state is below it.</summary>
        public WattHours AboveReserve(Percent from) =>
            new(Math.Max(0, Held(battery) * (Whole(from) - Whole(battery.Reserve)) / 100));

        /// <summary>What the battery loses while it carries a load: the load by the efficiency, and the idle draw.</summary>
        public Watts DrawnFor(Watts load) => new((load.Value / Share(battery)) + Math.Clamp(battery.Idle.Value, 0, Most));

        /// <summary>The stored energy over what is drawn for it; nothing where nothing is drawn or it takes over a year.</summary>
        public Hours? HoursToReserve(Percent from, Watts average)
        {
            var (drawn, stored) = (battery.DrawnFor(average).Value, battery.AboveReserve(from).Value);
            return drawn > 0 && stored <= drawn * MostHours ? new Hours(stored / drawn) : null;
        }
    }

    /// <summary>What it holds when full, kept where sums cannot overflow.</summary>
    internal static decimal Held(Battery battery) => Math.Clamp(battery.Usable.Value, 0, Most);

    /// <summary>A share as one of 0 to 100.</summary>
    internal static decimal Whole(Percent share) => Math.Clamp(share.Value, 0, 100);

    /// <summary>The efficiency as a factor, never nothing.</summary>
    internal static decimal Share(Battery battery) => Math.Clamp(battery.Efficiency.Value, 1, 100) / 100;
}
