using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `source.solar`: either a peak and its sun hours, or a power for each hour of a day.</summary>
internal static class SolarReader
{
    private const int HoursOfDay = 24;

    public static Solar Read(MappingReader solar)
    {
        var hourly = Hourly(solar);
        var read = new Solar
        {
            Peak = solar.Value(EnergyFields.Peak),
            SunHours = solar.Value(EnergyFields.SunHours),
            Hourly = hourly,
        };
        if (solar.ValueOf(EnergyFields.Hourly) is null)
        {
            if (solar.ValueOf(EnergyFields.Peak) is null) solar.Missing(EnergyFields.Peak);
            if (solar.ValueOf(EnergyFields.SunHours) is null) solar.Missing(EnergyFields.SunHours);
        }

        return read;
    }

    private static ImmutableArray<Watts> Hourly(MappingReader solar)
    {
        var hourly = solar.List(EnergyFields.Hourly).Select(hour => hour.Value).ToImmutableArray();
        if (solar.ValueOf(EnergyFields.Hourly) is { } node && hourly.Length != HoursOfDay)
        {
            solar.Wrong(
                EnergyFields.Hourly,
                node.Span,
                $"has {hourly.Length} powers that can be read; a day has {HoursOfDay} hours, the first from midnight");
        }

        return hourly;
    }
}
