using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `transfer`.</summary>
internal static class TransferReader
{
    public static TransferEquipment Read(MappingReader transfer) => new()
    {
        Kind = transfer.Value(TransferFields.Kind) ?? TransferKind.Manual,
        Rating = transfer.Value(TransferFields.Rating),
        IntegralOcpd = transfer.Value(TransferFields.IntegralOcpd) ?? false,
        SwitchesNeutral = transfer.Value(TransferFields.SwitchesNeutral),
        LoadManagement = transfer.Value(TransferFields.LoadManagement) ?? false,
    };
}
