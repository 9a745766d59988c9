using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Sheets.Diagram;

namespace PanelTui.Sheets;

/// <summary>The one-line diagram, and in words what is drawn.</summary>
internal static class DiagramSheet
{
    public static Sheet Of(Assessment assessment)
    {
        var schedule = assessment.Schedule;
        var drawing = OneLine.Of(schedule);
        return new Sheet(
            $"One-line diagram: {PanelWords.NameOf(schedule.Panel)}",
            [
                new Block.Picture(drawing) { InLetters = OneLineText.Of(schedule) },
                new Block.Facts([.. Facts(schedule)]),
                new Block.Paragraph("Symbols after IEEE 315 and IEC 60617 (from memory). Slashes count the poles. What is dashed is not in the file."),
            ])
        {
            Drawing = drawing,
        };
    }

    private static IEnumerable<(string Name, string Value)> Facts(Schedule schedule)
    {
        yield return ("Normal supply", PanelWords.Or(schedule.Panel.FedFrom, "not stated"));
        yield return ("Standby source", schedule.Source is { } source ? PanelWords.Of(source) : "none stated");
        yield return ("Neutral", SupplyWords.Neutral(schedule.Transfer));
        yield return ("Bonds", SupplyWords.Bonds(schedule));
        yield return ("Feeder", string.Join(", ", SupplyWords.Feeder(schedule.Feeder)));
    }
}
