using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `source.charging`; what starts charging must lie below what stops it.</summary>
internal static class ChargingReader
{
    public static Charging Read(MappingReader charging)
    {
        var read = new Charging
        {
            From = charging.Value(EnergyFields.From) ?? ChargingFrom.Grid,
            Power = charging.Required(EnergyFields.Power, Watts.Zero),
            StartsAt = charging.Required(EnergyFields.StartsAt, Percent.Zero),
            StopsAt = charging.Required(EnergyFields.StopsAt, Percent.Whole),
            Efficiency = charging.Value(EnergyFields.ChargerEfficiency) ?? Percent.Whole,
            InputLimit = charging.Value(EnergyFields.InputLimit),
        };
        if (read.StopsAt <= read.StartsAt)
        {
            charging.Wrong(
                EnergyFields.StopsAt,
                charging.SpanOf(EnergyFields.StopsAt),
                $"is {read.StopsAt}; it must be above starts_at, which is {read.StartsAt}");
        }

        return read;
    }
}
