using System.Text;
using PanelTui.Engine;
using PanelTui.Presentation;

namespace PanelTui.Sheets.Formats;

/// <summary>A sheet as Markdown with tables; pictures are left to other formats.</summary>
internal static class MarkdownFormat
{
    private const string Special = "\\`*_{}[]<>#|~&$^";

    public static string Of(Sheet sheet) => string.Join('\n',
    [
        $"# {Escaped(sheet.Title)}", "",
        .. sheet.Blocks.SelectMany(Lines),
        "---", "", Escaped(sheet.Foot), "",
    ]);

    /// <summary>Every character that could begin markup, and what would become a link by itself.</summary>
    public static string Escaped(string text)
    {
        var shown = new StringBuilder();
        var clean = DisplayText.Clean(text);
        for (var at = 0; at < clean.Length; at++)
        {
            var letter = clean[at];
            var begins = at == 0 && letter is '+' or '-' or '=';
            var links = letter is '@' || (letter is ':' && at + 1 < clean.Length && clean[at + 1] == '/')
                || (letter is '.' && at >= 3 && clean.AsSpan(at - 3, 3).Equals("www", StringComparison.OrdinalIgnoreCase));
            if (begins && at == 0 || links || Special.Contains(letter, StringComparison.Ordinal) || NumbersAList(clean, at)) shown.Append('\\');
            shown.Append(letter);
        }

        return shown.ToString();
    }

    private static bool NumbersAList(string text, int at) =>
        text[at] is '.' or ')' && at > 0 && text.AsSpan(0, at).IndexOfAnyExceptInRange('0', '9') < 0;

    private static IEnumerable<string> Lines(Block block) => block switch
    {
        Block.Heading heading => [$"## {Escaped(heading.Text)}", ""],
        Block.Paragraph paragraph => [Escaped(paragraph.Text), ""],
        Block.Facts facts => [.. facts.Items.Select(fact => $"- **{Escaped(fact.Name)}:** {Escaped(fact.Value)}"), ""],
        Block.Grid grid => [.. Lines(grid.Table), ""],
        Block.Picture { InLetters: [_, ..] lines } => [.. lines.Select(line => $"    {DisplayText.Clean(line)}"), ""],
        Block.Picture picture => [$"(Picture: {Escaped(picture.Drawing.Title)})", ""],
        Block.Signatures signatures => [.. signatures.Lines.Select(line => $"- \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_ {Escaped(line)}"), ""],
        _ => [],
    };

    private static IEnumerable<string> Lines(Table table) =>
    [
        Row(table.Columns.Select(column => column.Title)),
        $"| {string.Join(" | ", table.Columns.Select(column => Rule(column.Align)))} |",
        .. table.Rows.Select(row => Row(row.Select(cell => cell.Text))),
    ];

    private static string Rule(Align align) => align switch
    {
        Align.Right => "---:",
        Align.Middle => ":---:",
        Align.Left => "---",
        _ => throw Unnamed.Of(align),
    };

    private static string Row(IEnumerable<string> cells) => $"| {string.Join(" | ", cells.Select(Escaped))} |";
}
