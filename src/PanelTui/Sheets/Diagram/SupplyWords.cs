using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Sheets.Diagram;

/// <summary>What stands beside the symbols of the supplies.</summary>
internal static class SupplyWords
{
    public static string Neutral(TransferEquipment? transfer) => transfer?.SwitchesNeutral switch
    {
        true => "neutral switched: the source is a separately derived system",
        false => "neutral not switched: the source is not separately derived",
        null => "not stated whether the neutral is switched",
    };

    public static string Bonds(Schedule schedule) => string.Join("; ", [Service, AtSource(schedule), AtPanel(schedule.Panel)]);

    /// <summary>The service is outside of the file.</summary>
    public const string Service = "bond and electrode at the service";

    public static string AtSource(Schedule schedule) => schedule.Source?.Neutral switch
    {
        SourceNeutral.Bonded => "source: neutral bonded",
        SourceNeutral.Floating => "source: neutral floating",
        _ => "source: bond not stated",
    };

    public static string AtPanel(Panel panel) => panel.NeutralBonded switch
    {
        true => "panel: neutral bonded here, which belongs at the service only",
        false => "panel: neutral kept apart from ground",
        null => "panel: bond not stated",
    };

    public static IEnumerable<string> Feeder(Feeder? feeder)
    {
        yield return feeder?.Conductor is { } wire ? $"feeder {wire}" : "feeder, conductor not stated";
        yield return feeder?.Length is { } length ? $"{Shown.Exactly(decimal.Round(length.Value, 1))} ft one way" : "length not stated";
    }

    public static IEnumerable<string> Transfer(TransferEquipment? transfer)
    {
        if (transfer is null)
        {
            yield return "transfer equipment not stated";
            yield break;
        }

        yield return $"{PanelWords.Of(transfer.Kind)}, {PanelWords.Stated(transfer.Rating)}";
        yield return transfer.SwitchesNeutral switch { true => "neutral switched", false => "neutral solid", null => "neutral: not stated" };
        if (transfer.IntegralOcpd) yield return "overcurrent protection of its own";
        if (transfer.LoadManagement) yield return "with load management";
    }
}
