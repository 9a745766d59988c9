using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `feeder`.</summary>
internal static class FeederReader
{
    public static Feeder Read(MappingReader feeder) => new()
    {
        Ocpd = feeder.Value(FeederFields.Ocpd),
        Conductor = feeder.Object(FeederFields.Conductor),
        Insulation = feeder.Value(FeederFields.Insulation),
        Length = feeder.Value(FeederFields.Length),
        Ambient = feeder.Value(FeederFields.Ambient),
        CurrentCarrying = feeder.Value(FeederFields.CurrentCarrying),
        Conduit = feeder.Value(FeederFields.Conduit) ?? Conduit.Pvc,
    };
}
