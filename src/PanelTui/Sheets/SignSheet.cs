using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Codes;
using PanelTui.Presentation;
using PanelTui.Sheets.Layout;

namespace PanelTui.Sheets;

/// <summary>The signs that this installation asks for, each with its section and where it belongs.</summary>
internal static class SignSheet
{
    private const double Width = 432;
    private const double Size = 18;
    private const double Margin = 14;

    private static readonly ImmutableArray<Column> Listed = [new("Where"), new("Sign"), new("Section"), new("Wording")];

    public static Sheet Of(Assessment assessment)
    {
        var schedule = assessment.Schedule;
        var edition = schedule.Code.Edition;
        ImmutableArray<NeededSign> signs = [.. NeededSign.For(schedule)];
        return new Sheet(
            $"Signs: {PanelWords.NameOf(schedule.Panel)}",
            [
                .. signs.SelectMany(sign => Blocks(sign, edition)),
                .. None(signs),
                .. NeededSign.Undecided(schedule).Select(sentence => new Block.Paragraph($"To settle: {sentence}")),
                new Block.Paragraph("Permanent, readable from where one stands, and fit for the place: ask the authority for size, colour and material."),
            ])
        {
            Records = Table.Of(Listed, signs.Select(sign => Record(sign, edition))),
            Drawing = Plate(signs),
        };
    }

    private static IEnumerable<Block> Blocks(NeededSign sign, CodeEdition edition) =>
    [
        new Block.Heading($"{char.ToUpperInvariant(sign.Where[0])}{sign.Where[1..]}: {sign.Section.In(edition)}"),
        new Block.Picture(Plate([sign])) { InLetters = Framed(sign.Text) },
        new Block.Paragraph(sign.Wording),
    ];

    private static ImmutableArray<string> Framed(string text)
    {
        string[] lines = [.. Wrapped.Of(DisplayText.Clean(text), 56)];
        var edge = $"+{new string('-', 60)}+";
        return [edge, .. lines.Select(line => $"|  {DisplayText.Fit(line, 56)}  |"), edge];
    }

    private static IEnumerable<Block> None(ImmutableArray<NeededSign> signs) => signs.IsEmpty
        ? [new Block.Paragraph("Nothing in the file asks for a sign that this program knows.")]
        : [];

    private static Drawing Plate(ImmutableArray<NeededSign> signs)
    {
        var sketch = new Sketch();
        var y = 2.0;
        foreach (var sign in signs)
        {
            var lines = Typeface.Wrap(sign.Text, Width - (2 * Margin), Size, bold: true).ToList();
            var height = (lines.Count * Size * 1.25) + (2 * Margin);
            sketch.Box(2, y, Width - 4, height, Shade.Paper, weight: 2.5);
            for (var at = 0; at < lines.Count; at++)
                sketch.Text(Width / 2, y + Margin + (Size * ((at * 1.25) + 0.95)), lines[at], Size, bold: true, align: Align.Middle);
            y += height + Margin;
        }

        return sketch.Done(signs.Length == 1 ? signs[0].Text : "Signs", Width, Math.Max(2 * Margin, y - Margin + 2));
    }

    private static ImmutableArray<Cell> Record(NeededSign sign, CodeEdition edition) =>
        [sign.Where, sign.Text, $"{sign.Section.In(edition)}", sign.Prescribed ? "prescribed" : "proposed"];
}
