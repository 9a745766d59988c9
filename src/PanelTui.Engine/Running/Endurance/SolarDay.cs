using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>What the sun gives in each hour of a day, from midnight on.</summary>
/// <remarks>
/// A half sine about noon: with peak P over D hours of daylight its energy is 2 P D / pi, so that the hours of full sun h make
/// D = h x pi / 2. The energy of an hour is the exact integral, P D / pi x (cos a - cos b).
/// </remarks>
public static class SolarDay
{
    public const int Hours = 24;

    private const double Noon = 12;
    private const int Nanowatthours = 9;
    private const decimal Most = 1_000_000_000;

    /// <summary>The energy of the hour that begins at <paramref name="hour"/>; hours past midnight go on to the next day.</summary>
    public static WattHours EnergyIn(this Solar solar, int hour)
    {
        var ofDay = ((hour % Hours) + Hours) % Hours;
        if (!solar.Hourly.IsDefaultOrEmpty)
            return new(ofDay < solar.Hourly.Length ? Math.Clamp(solar.Hourly[ofDay].Value, 0, Most) : 0);
        return solar is { Peak: { } peak, SunHours: { } sun } ? HalfSine(peak, sun, ofDay) : WattHours.Zero;
    }

    /// <summary>The energy of a whole day.</summary>
    public static WattHours EnergyOfDay(this Solar solar) =>
        Enumerable.Range(0, Hours).Aggregate(WattHours.Zero, (sum, hour) => sum + solar.EnergyIn(hour));

    /// <remarks>More sun than a day of 24 hours holds raises the peak, so that the energy stays as stated.</remarks>
    private static WattHours HalfSine(Watts peak, Hours sun, int hour)
    {
        var full = (double)Math.Clamp(sun.Value, 0, Hours);
        var daylight = Math.Min(full * Math.PI / 2, Hours);
        if (daylight <= 0)
            return WattHours.Zero;
        var energy = (double)Math.Clamp(peak.Value, 0, Most) * full;
        var rise = Noon - (daylight / 2);
        var part = (CosineAt(hour) - CosineAt(hour + 1)) / 2;
        return new(Math.Round((decimal)(energy * part), Nanowatthours));

        double CosineAt(int at) => Math.Cos(Math.Clamp((at - rise) / daylight, 0, 1) * Math.PI);
    }
}
