using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Sheets.Layout;

namespace PanelTui.Sheets;

/// <summary>One label a circuit, in the width of a label printer's tape.</summary>
internal static class LabelSheet
{
    /// <summary>Tape widths in millimetres. Common practice, no source.</summary>
    public static readonly ImmutableArray<int> Tapes = [9, 12, 18, 24];

    private const double PointsPerMillimetre = 72 / 25.4;
    private const double Gap = 8;
    private const int Columns = 2;
    private const double Margin = 6;

    /// <summary>Common practice, no source: long enough for a name, short enough for a panel's dead front.</summary>
    private const double Length = 80 * PointsPerMillimetre;

    private static readonly ImmutableArray<Column> Listed =
        [new("Space"), new("Leg"), new("Breaker"), new("Circuit"), new("Line 1"), new("Line 2")];

    public static Sheet Of(Assessment assessment, SheetChoices choices)
    {
        var schedule = assessment.Schedule;
        var circuits = schedule.Circuits.OrderBy(circuit => circuit.Space).ToList();
        return new Sheet(
            $"Circuit labels: {PanelWords.NameOf(schedule.Panel)}",
            [
                new Block.Paragraph($"{circuits.Count} labels for {choices.Tape} mm tape. Print at 100 %, cut along the lines."),
                .. Pages(circuits, schedule.Panel.System, choices),
            ])
        {
            Records = Table.Of(Listed, circuits.Select(circuit => Record(circuit, schedule.Panel.System))),
            Drawing = Page(circuits, schedule.Panel.System, choices.Tape),
        };
    }

    /// <summary>So many labels to a page that none is cut in two or made smaller.</summary>
    private static IEnumerable<Block> Pages(List<Circuit> circuits, PanelSystem system, SheetChoices choices)
    {
        var pitch = (choices.Tape * PointsPerMillimetre) + Gap;
        var across = Math.Clamp((int)((choices.Paper.Inside.Width + Gap) / (Length + Gap)), 1, Columns);
        var down = Math.Max(1, (int)((choices.Paper.Inside.Height - (6 * Gap)) / pitch) - 1);
        return circuits.Chunk(across * down).Select(some => new Block.Picture(Page([.. some], system, choices.Tape, across))
        {
            InLetters = [.. some.SelectMany(circuit => Letters(circuit, system))],
        });
    }

    /// <summary>The two lines of a label, for a label printer that is typed at, and a blank one.</summary>
    private static string[] Letters(Circuit circuit, PanelSystem system) => [First(circuit), Second(circuit, system), ""];

    private static string First(Circuit circuit) => $"{PanelWords.Spaces(circuit.Spaces)} · {PanelWords.Purpose(circuit)}";

    private static Drawing Page(List<Circuit> circuits, PanelSystem system, int tape, int across = Columns)
    {
        var sketch = new Sketch();
        var height = tape * PointsPerMillimetre;
        for (var at = 0; at < circuits.Count; at++)
            Label(sketch, at % across * (Length + Gap), at / across * (height + Gap), height, circuits[at], system);
        var rows = Math.Max(1, (circuits.Count + across - 1) / across);
        return sketch.Done("Circuit labels", (across * (Length + Gap)) - Gap, (rows * (height + Gap)) - Gap);
    }

    private static void Label(Sketch sketch, double x, double y, double height, Circuit circuit, PanelSystem system)
    {
        var (large, small) = (height * 0.36, height * 0.24);
        var (number, breaker) = (PanelWords.Spaces(circuit.Spaces), Second(circuit, system));
        var left = Math.Max(Typeface.Width(number, large, bold: true), Typeface.Width(breaker, small));
        sketch.Box(x, y, Length, height, Shade.Paper, weight: 0.5);
        sketch.Text(x + Margin, y + (height * 0.45), number, large, bold: true);
        sketch.Text(x + Margin, y + (height * 0.84), breaker, small);
        var (lines, size) = Fitted(PanelWords.Purpose(circuit), Length - left - (3 * Margin), height);
        var top = y + ((height - (lines.Count * size * 1.15)) / 2);
        for (var at = 0; at < lines.Count; at++)
            sketch.Text(x + Length - Margin, top + (size * (0.92 + (at * 1.15))), lines[at], size, bold: true, align: Align.Right);
    }

    /// <summary>The name in the largest letters whose lines the label has room for.</summary>
    private static (List<string> Lines, double Size) Fitted(string name, double room, double height)
    {
        const double Step = 0.92;
        for (var size = height * 0.36; ; size *= Step)
        {
            var lines = Typeface.Wrap(name, room, size, bold: true).ToList();
            if (lines.Count * size * 1.15 <= height * 0.92) return (lines, size);
        }
    }

    private static string Second(Circuit circuit, PanelSystem system) =>
        $"{PanelWords.Of(circuit.Breaker)} · leg {Legs(circuit, system)}";

    private static string Legs(Circuit circuit, PanelSystem system) => string.Join(' ', circuit.Legs(system));

    private static ImmutableArray<Cell> Record(Circuit circuit, PanelSystem system) =>
    [
        PanelWords.Spaces(circuit.Spaces),
        Legs(circuit, system),
        PanelWords.Of(circuit.Breaker),
        PanelWords.Purpose(circuit),
        First(circuit),
        Second(circuit, system),
    ];
}
