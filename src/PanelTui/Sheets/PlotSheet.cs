using System.Collections.Immutable;
using PanelTui.Engine;

namespace PanelTui.Sheets;

/// <summary>What each leg carries, as bars: connected, calculated, and in each scenario against the source's limit; then how long a battery lasts.</summary>
internal static class PlotSheet
{
    private const double Width = 520;
    private const double Left = 150;
    private const double Room = 240;
    private const double Pitch = 17;

    private static readonly ImmutableArray<Column> Listed = [new("What"), new("Leg"), new("Value"), new("Unit"), new("Limit")];

    public static Sheet Of(Assessment assessment)
    {
        ImmutableArray<LegBar> bars = [.. LegBar.Of(assessment)];
        var drawing = Draw(bars, assessment);
        ImmutableArray<ImmutableArray<Cell>> rows = [.. bars.Select(Row)];
        return new Sheet(
            $"Leg loads: {PanelWords.NameOf(assessment.Schedule.Panel)}",
            [new Block.Picture(drawing), new Block.Grid(Table.Of(Shown, rows))])
        {
            Records = Table.Of(Listed, rows),
            Drawing = drawing,
        };
    }

    private static ImmutableArray<Column> Shown =>
        [new("What", Wraps: true), new("Leg"), new("Value", Align.Right), new("Unit"), new("Limit", Align.Right)];

    private static Drawing Draw(ImmutableArray<LegBar> bars, Assessment assessment)
    {
        var sketch = new Sketch();
        var y = 4.0;
        foreach (var group in bars.GroupBy(bar => bar.What))
        {
            var most = Math.Max(1, group.Max(bar => (double)Math.Max(bar.Value, bar.Limit ?? 0)));
            sketch.Text(4, y + 12, group.Key, 9.5, bold: true, room: Width - 8);
            y += Pitch;
            foreach (var bar in group)
            {
                Bar(sketch, y, bar, most);
                y += Pitch;
            }

            y += 8;
        }

        y = CourseChart.Draw(sketch, y, assessment);
        return sketch.Done("Leg loads as bars, and the charge of the battery over three days", Width, y + 4);
    }

    private static void Bar(Sketch sketch, double y, LegBar bar, double most)
    {
        var length = Room * (double)bar.Value / most;
        sketch.Text(Left - 8, y + 11, $"Leg {bar.Leg}", 8.5, align: Align.Right);
        sketch.Box(Left, y + 3, Math.Max(0.5, length), Pitch - 7, bar.Over ? Shade.Ink : Shade.Middle, weight: 0.5);
        if (bar.Limit is { } limit)
        {
            var at = Left + (Room * (double)limit / most);
            sketch.Line(at, y, at, y + Pitch - 1, 1.6);
        }

        sketch.Text(Left + Room + 10, y + 11, bar.Words, 8.5, room: Width - Left - Room - 10);
    }

    private static ImmutableArray<Cell> Row(LegBar bar) =>
        [bar.What, $"{bar.Leg}", Cell.Of(bar.Value), bar.Unit, bar.Limit is { } limit ? Cell.Of(limit) : ""];
}
