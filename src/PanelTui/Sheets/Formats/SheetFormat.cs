using System.Collections.Immutable;
using System.Text;

namespace PanelTui.Sheets.Formats;

/// <summary>A format that sheets can be written in.</summary>
/// <param name="Write">The bytes; nothing for a sheet that makes no sense in it. The same sheet gives the same bytes.</param>
internal sealed record SheetFormat(string Name, ImmutableArray<string> Endings, bool IsBinary, Func<Sheet, SheetChoices, byte[]?> Write)
{
    public static readonly SheetFormat Text = new("text", [".txt"], false, (sheet, _) => Bytes(TextFormat.Of(sheet)));

    public static readonly SheetFormat Markdown = new("markdown", [".md"], false, (sheet, _) => Bytes(MarkdownFormat.Of(sheet)));

    public static readonly SheetFormat Html = new("html", [".html", ".htm"], false, (sheet, _) => Bytes(HtmlFormat.Of(sheet)));

    public static readonly SheetFormat Csv = new("csv", [".csv"], false, (sheet, _) => Bytes(CsvFormat.Of(sheet)));

    public static readonly SheetFormat Svg = new("svg", [".svg"], false, (sheet, _) => Bytes(SvgFormat.Of(sheet)));

    public static readonly SheetFormat Pdf = new("pdf", [".pdf"], true, (sheet, choices) => PdfFormat.Of(sheet, choices.Paper));

    public static readonly ImmutableArray<SheetFormat> All = [Text, Markdown, Html, Csv, Svg, Pdf];

    public static SheetFormat? Find(string name) => All.FirstOrDefault(format => format.Name == name);

    /// <summary>By the ending of a file's name; nothing for one that is not known.</summary>
    public static SheetFormat? ByEnding(string path)
    {
        var ending = Path.GetExtension(path);
        return All.FirstOrDefault(format => format.Endings.Contains(ending, StringComparer.OrdinalIgnoreCase));
    }

    private static byte[]? Bytes(string? text) => text is null ? null : Encoding.UTF8.GetBytes(text);
}
