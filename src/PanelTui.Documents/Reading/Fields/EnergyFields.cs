using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of `source.battery`, `source.charging` and `source.solar`.</summary>
internal static class EnergyFields
{
    public static readonly ValueField<WattHours> Usable = new("source.battery.usable", Forms.Energy, "12 kWh",
        "What the batteries hold between full and empty") { IsRequired = true };

    public static readonly ValueField<Percent> Reserve = new("source.battery.reserve", Forms.ShareOrZero, "25 %",
        "The state of charge that is not gone below") { Default = "0 %" };

    public static readonly ValueField<Percent> Efficiency = new("source.battery.efficiency", Forms.Share, "88 %",
        "The share of the stored energy that reaches the panel") { Default = "100 %" };

    public static readonly ValueField<Watts> Idle = new("source.battery.idle", Forms.PowerOrZero, "60 W",
        "What the inverters draw with nothing switched on") { Default = "0 W" };

    public static readonly ValueField<ChargingFrom> From = new("source.charging.from", Choices.Charging, "grid",
        "What the batteries are charged from") { Default = "grid" };

    public static readonly ValueField<Watts> Power = new("source.charging.power", Forms.Power, "3 kW",
        "What charging draws") { IsRequired = true };

    public static readonly ValueField<Percent> StartsAt = new("source.charging.starts_at", Forms.ShareOrZero, "25 %",
        "The state of charge at which charging starts") { IsRequired = true };

    public static readonly ValueField<Percent> StopsAt = new("source.charging.stops_at", Forms.Share, "26 %",
        "The higher state of charge at which it stops") { IsRequired = true };

    public static readonly ValueField<Percent> ChargerEfficiency = new("source.charging.efficiency", Forms.Share, "92 %",
        "The share of what charging draws that reaches the batteries") { Default = "100 %" };

    public static readonly ValueField<Amperes> InputLimit = new("source.charging.input_limit", Forms.Current, "30 A",
        "What the unit takes in on each leg while it charges, for the charger and what runs together");

    public static readonly ValueField<Watts> Peak = new("source.solar.peak", Forms.Power, "1600 W",
        "What the panels give at noon");

    public static readonly ValueField<Hours> SunHours = new("source.solar.sun_hours", new SunHoursForm(), "4.2",
        "Hours of full sun that make up the energy of a day");

    public static readonly ListField<Watts> Hourly = new("source.solar.hourly", Forms.PowerOrZero,
        "[0 W, 0 W, 0 W, 0 W, 0 W, 0 W, 80 W, 300 W, 700 W, 1100 W, 1400 W, 1600 W, "
        + "1600 W, 1400 W, 1100 W, 700 W, 300 W, 80 W, 0 W, 0 W, 0 W, 0 W, 0 W, 0 W]",
        "The power of each hour of a day from midnight on, 24 of them, instead of peak and sun_hours");

    public static readonly ImmutableArray<Field> All =
    [
        Usable, Reserve, Efficiency, Idle, From, Power, StartsAt, StopsAt, ChargerEfficiency, InputLimit,
        Peak, SunHours, Hourly,
    ];
}
