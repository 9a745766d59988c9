using PanelTui.Engine.Panels;

namespace PanelTui.Sheets;

/// <summary>What brings the standby supply to the panel, and what has to be read on the wall.</summary>
internal static class SupplyParts
{
    public static IEnumerable<Part> Of(Schedule schedule) =>
    [
        .. Transfer(schedule.Transfer),
        .. Inlet(schedule.Source),
        new Part("label", "circuit label", schedule.Circuits.Length),
        new Part("label", "door directory", 1),
        .. NeededSign.For(schedule).Select(sign => new Part("sign", sign.Text, 1, Remark: $"{sign.Where}, {sign.Section.In(schedule.Code.Edition)}")),
    ];

    private static IEnumerable<Part> Transfer(TransferEquipment? transfer) => transfer is null ? [] :
    [
        new Part("transfer", $"{transfer.Kind.Title}, {PanelWords.Stated(transfer.Rating)}", 1, Remark: Neutral(transfer.SwitchesNeutral)),
    ];

    private static string Neutral(bool? switched) => switched switch
    {
        true => "switches the neutral",
        false => "neutral not switched",
        null => "whether it switches the neutral is not stated",
    };

    private static IEnumerable<Part> Inlet(StandbySource? source)
    {
        if (source?.Outlet is not { } outlet) yield break;
        yield return new Part("inlet", $"power inlet, NEMA {outlet}", 1);
        yield return new Part("cord", $"cord, NEMA {outlet}{(source.Cord is { } wire ? $", {wire}" : "")}", 1, Remark: source.Cord is null ? "conductor not stated" : "");
    }
}
