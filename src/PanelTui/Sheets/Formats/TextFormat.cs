using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Presentation;
using PanelTui.Sheets.Layout;

namespace PanelTui.Sheets.Formats;

/// <summary>A sheet as plain text; a picture that letters cannot tell is left to other formats.</summary>
/// <param name="columns">The width it keeps to where a word allows it.</param>
internal sealed class TextFormat(int columns)
{
    private const int Columns = 100;
    private const string Gap = "  ";

    public static string Of(Sheet sheet) => string.Concat(new TextFormat(Columns).Whole(sheet).Select(line => $"{line}\n"));

    /// <summary>The lines without the title, in so many columns.</summary>
    public static IEnumerable<string> Body(Sheet sheet, int columns) => new TextFormat(columns).Body(sheet).Select(line => line.TrimEnd());

    private IEnumerable<string> Whole(Sheet sheet) =>
    [
        .. Paragraph(sheet.Title), Under(sheet.Title, '='), "", .. Body(sheet).Select(line => line.TrimEnd()),
    ];

    private IEnumerable<string> Body(Sheet sheet) => [.. sheet.Blocks.SelectMany(Lines), .. Paragraph(sheet.Foot)];

    private string Under(string title, char line) => new(line, Math.Min(columns, DisplayText.Width(title)));

    private IEnumerable<string> Lines(Block block) => block switch
    {
        Block.Heading heading => [.. Paragraph(heading.Text), Under(heading.Text, '-')],
        Block.Paragraph paragraph => [.. Paragraph(paragraph.Text), ""],
        Block.Facts facts => [.. Facts(facts), ""],
        Block.Grid grid => [.. Grid(grid.Table), ""],
        Block.Picture { InLetters: [_, ..] lines } => [.. lines.Select(line => DisplayText.Fit(DisplayText.Clean(line), columns).TrimEnd()), ""],
        Block.Picture picture => [.. Paragraph($"[Picture: {picture.Drawing.Title}]"), ""],
        Block.Signatures signatures => [.. signatures.Lines.SelectMany(line => new[] { "", "________________________________", DisplayText.Clean(line), "" })],
        _ => [],
    };

    private IEnumerable<string> Paragraph(string text) => Wrapped.Of(DisplayText.Clean(text), columns);

    private IEnumerable<string> Facts(Block.Facts facts)
    {
        var indent = facts.Items.Max(fact => DisplayText.Width(fact.Name)) + Gap.Length;
        foreach (var (name, value) in facts.Items)
        {
            var lines = Wrapped.Of(DisplayText.Clean(value), columns - indent).DefaultIfEmpty("").ToList();
            for (var at = 0; at < lines.Count; at++) yield return DisplayText.Fit(at == 0 ? name : "", indent) + lines[at];
        }
    }

    private IEnumerable<string> Grid(Table table)
    {
        var room = columns - (Gap.Length * (table.Columns.Length - 1));
        double[] wanted = [.. table.Columns.Select((column, at) => (double)table.Rows
            .Select(row => DisplayText.Width(row[at].Text)).Append(DisplayText.Width(column.Title)).Max())];
        int[] widths = [.. ColumnWidths.Fit(wanted, [.. table.Columns.Select(column => column.Wraps)], room).Select(width => Math.Max(1, (int)width))];
        return
        [
            .. Row([.. table.Columns.Select(column => column.Title)], table.Columns, widths),
            string.Join(Gap, widths.Select(width => new string('-', width))),
            .. table.Rows.SelectMany(row => Row([.. row.Select(cell => cell.Text)], table.Columns, widths)),
        ];
    }

    private static IEnumerable<string> Row(ImmutableArray<string> cells, ImmutableArray<Column> of, int[] widths)
    {
        var lines = cells.Select((cell, at) => Wrapped.Of(DisplayText.Clean(cell), widths[at]).ToList()).ToList();
        for (var line = 0; line < Math.Max(1, lines.Max(cell => cell.Count)); line++)
            yield return string.Join(Gap, lines.Select((cell, at) => Aligned(cell.ElementAtOrDefault(line) ?? "", of[at].Align, widths[at])));
    }

    private static string Aligned(string text, Align align, int width)
    {
        var blanks = Math.Max(0, width - DisplayText.Width(text));
        var before = align switch { Align.Right => blanks, Align.Middle => blanks / 2, Align.Left => 0, _ => throw Unnamed.Of(align) };
        return new string(' ', before) + text + new string(' ', blanks - before);
    }
}
