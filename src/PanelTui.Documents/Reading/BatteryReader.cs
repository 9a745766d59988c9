using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `source.battery`.</summary>
internal static class BatteryReader
{
    public static Battery Read(MappingReader battery) => new()
    {
        Usable = battery.Required(EnergyFields.Usable, WattHours.Zero),
        Reserve = battery.Value(EnergyFields.Reserve) ?? Percent.Zero,
        Efficiency = battery.Value(EnergyFields.Efficiency) ?? Percent.Whole,
        Idle = battery.Value(EnergyFields.Idle) ?? Watts.Zero,
    };
}
