using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `source`.</summary>
internal static class SourceReader
{
    public static StandbySource Read(MappingReader source) => new()
    {
        Kind = source.Required(SourceFields.Kind, SourceKind.Generator),
        Location = source.Object(SourceFields.Location) ?? "",
        Arrangement = source.Value(SourceFields.Arrangement) ?? SourceArrangement.OneUnit,
        Continuous = source.Value(SourceFields.Continuous),
        ContinuousPerLeg = source.Value(SourceFields.ContinuousPerLeg),
        Surge = source.Value(SourceFields.Surge),
        SurgePerLeg = source.Value(SourceFields.SurgePerLeg),
        SurgeTime = source.Value(SourceFields.SurgeTime),
        Outlet = source.Object(SourceFields.Outlet),
        Cord = source.Object(SourceFields.Cord),
        Ocpd = source.Value(SourceFields.Ocpd),
        Neutral = source.Value(SourceFields.Neutral),
        Gfci = source.Value(SourceFields.Gfci),
        Battery = source.Section(SourceFields.Battery, "battery") is { } battery ? BatteryReader.Read(battery) : null,
        Charging = source.Section(SourceFields.Charging, "charging") is { } charging
            ? ChargingReader.Read(charging)
            : null,
        Solar = source.Section(SourceFields.Solar, "solar") is { } solar ? SolarReader.Read(solar) : null,
    };
}
