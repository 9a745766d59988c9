using System.Collections.Immutable;
using PanelTui.Engine;

namespace PanelTui.Sheets;

/// <summary>What to buy or to count: breakers, conductors, filler plates, what brings the standby supply in, labels and signs.</summary>
internal static class PartsSheet
{
    private static readonly ImmutableArray<Column> Columns =
        [new("Kind"), new("Part", Wraps: true), new("Quantity", Align.Right), new("Unit"), new("Metres", Align.Right), new("Remark", Wraps: true)];

    public static Sheet Of(Assessment assessment)
    {
        var table = Table.Of(Columns, All(assessment).Select(part => part.Row));
        return new Sheet(
            $"Parts list: {PanelWords.NameOf(assessment.Schedule.Panel)}",
            [
                new Block.Grid(table),
                new Block.Paragraph(
                    $"Lengths hold an allowance of {WireParts.AllowancePercent} % (common practice, no source): measure the run before cutting. "
                    + "Breakers, fillers, interlocks and tandems have to be listed for this panel."),
            ])
        {
            Records = table,
        };
    }

    private static IEnumerable<Part> All(Assessment assessment) =>
    [
        .. BreakerParts.Of(assessment.Schedule),
        .. WireParts.Of(assessment),
        .. SupplyParts.Of(assessment.Schedule),
    ];
}
