using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `panel`.</summary>
internal static class PanelReader
{
    public static Panel Read(MappingReader panel)
    {
        var spaces = panel.Required(PanelFields.Spaces, SpaceNumber.Most);
        return new()
        {
            Name = panel.Object(PanelFields.Name) ?? "",
            Location = panel.Object(PanelFields.Location) ?? "",
            FedFrom = panel.Object(PanelFields.FedFrom) ?? "",
            Revision = panel.Object(PanelFields.Revision) ?? "",
            Revised = panel.Value(PanelFields.Revised),
            VerifiedBy = panel.Object(PanelFields.VerifiedBy) ?? "",
            System = panel.Required(PanelFields.System, PanelSystem.SplitPhase),
            Spaces = spaces,
            Bus = panel.Value(PanelFields.Bus),
            Main = panel.Object(PanelFields.Main),
            TandemSpaces = [.. TandemSpaces(panel, spaces).Distinct().Order()],
            FaultCurrent = panel.Value(PanelFields.FaultCurrent),
            Interrupting = panel.Value(PanelFields.Interrupting),
            Terminals = panel.Value(PanelFields.Terminals),
            NeutralBonded = panel.Value(PanelFields.NeutralBonded),
        };
    }

    private static IEnumerable<int> TandemSpaces(MappingReader panel, int spaces)
    {
        foreach (var (space, node) in panel.List(PanelFields.TandemSpaces))
        {
            if (space <= spaces) yield return space;
            else panel.Wrong(
                PanelFields.TandemSpaces, node.Span, $"names space {space}; the panel has {spaces} spaces");
        }
    }
}
