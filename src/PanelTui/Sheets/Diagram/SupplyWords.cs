using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Presentation;

namespace PanelTui.Sheets.Diagram;

/// <summary>What stands beside the symbols of the supplies.</summary>
internal static class SupplyWords
{
    public static string Neutral(TransferEquipment? transfer) => transfer?.NeutralIsSwitched switch
    {
        true => "neutral switched: the source is a separately derived system",
        false => "neutral not switched: the source is not separately derived",
        null => "not stated whether the neutral is switched",
    };

    public static string Bonds(Schedule schedule) => string.Join("; ", [Service, AtSource(schedule), AtPanel(schedule)]);

    /// <summary>The service is outside of the file, so nothing is asserted of it.</summary>
    public const string Service = "service: bond and electrode not in this file, look there";

    /// <summary>What the bonds come to while the panel is on standby, as `run` says it.</summary>
    public static string OnStandby(Schedule schedule)
    {
        if (NeutralVerdict.Of(schedule) is not { } verdict) return "No source is stated.";
        var conclusion = NeutralRows.Conclusion(verdict);
        return NeutralRows.PanelBond(verdict) is { } bond ? $"{conclusion} {bond}" : conclusion;
    }

    public static string AtSource(Schedule schedule) => schedule.Source?.Neutral switch
    {
        SourceNeutral.Bonded => "source: neutral bonded",
        SourceNeutral.Floating => "source: neutral floating",
        null => "source: bond not stated",
        var neutral => throw Unnamed.Of(neutral),
    };

    public static string AtPanel(Schedule schedule) => schedule.Panel.NeutralBonded switch
    {
        true when NeutralVerdict.Of(schedule) is { IsInferred: true } => "panel: neutral bonded here",
        true => "panel: neutral bonded here, which belongs at the service only",
        false => "panel: neutral kept apart from ground",
        null => "panel: bond not stated",
    };

    /// <summary>What it is, what it gives, what feeds its battery, and where it stands.</summary>
    public static IEnumerable<string> Source(StandbySource source)
    {
        foreach (var part in PanelWords.Of(source).Split(", ", 2)) yield return part;
        if (source.Solar is { Peak: { } peak }) yield return $"solar {peak} peak";
        if (source.Charging is { } charging) yield return $"charged from {charging.From.Word}, {charging.Power}";
        if (source.Location.Length > 0) yield return source.Location;
    }

    public static string Cord(StandbySource source) => source.Cord is { } wire ? $"cord {wire}" : "cord not stated";

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

        yield return $"{transfer.Kind.Title}, {PanelWords.Stated(transfer.Rating)}";
        yield return transfer.SwitchesNeutral switch { true => "neutral switched", false => "neutral solid", null => "neutral: not stated" };
        if (transfer.IntegralOcpd) yield return "overcurrent protection of its own";
        if (transfer.LoadManagement) yield return "with load management";
    }
}
