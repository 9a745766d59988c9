using System.Text;
using PanelTui.Engine;
using PanelTui.Sheets.Layout;

namespace PanelTui.Sheets.Formats;

/// <summary>A sheet's picture as SVG: no script, no link, nothing from outside.</summary>
internal static class SvgFormat
{
    private const double FootSize = 6.5;
    private const double Margin = 10;

    /// <summary>Nothing for a sheet without a picture.</summary>
    public static string? Of(Sheet sheet)
    {
        if (sheet.Drawing is not { } drawing) return null;
        var wide = drawing with { Width = Math.Max(drawing.Width, 260) };
        var foot = Typeface.Wrap($"{sheet.Title}. {sheet.Foot}", wide.Width, FootSize).Select((line, at) => (Mark)new Mark.Letters(
            new Point(0, wide.Height + 14 + (at * 8.5)), line, FootSize)).ToList();
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + Element(wide with
        {
            Title = sheet.Title,
            Height = wide.Height + 14 + (foot.Count * 8.5),
            Marks = [.. wide.Marks, .. foot],
        });
    }

    /// <summary>The drawing as an `svg` element, also inside a page.</summary>
    public static string Element(Drawing drawing)
    {
        var (width, height) = (drawing.Width + (2 * Margin), drawing.Height + (2 * Margin));
        var svg = new StringBuilder();
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\"")
            .Append(Pair("width", $"{XmlText.Of(width)}pt")).Append(Pair("height", $"{XmlText.Of(height)}pt"))
            .Append(Pair("viewBox", $"{XmlText.Of(-Margin)} {XmlText.Of(-Margin)} {XmlText.Of(width)} {XmlText.Of(height)}"))
            .Append($" font-family=\"'{SheetFonts.Family}', 'DejaVu Sans', sans-serif\">\n")
            .Append("<title>").Append(XmlText.Of(drawing.Title)).Append("</title>\n")
            .Append("<rect").Append(Pair("x", -Margin)).Append(Pair("y", -Margin))
            .Append(Pair("width", width)).Append(Pair("height", height)).Append(" fill=\"#fff\"/>\n");
        foreach (var mark in drawing.Marks) svg.Append(Of(mark)).Append('\n');
        return svg.Append("</svg>\n").ToString();
    }

    private static string Of(Mark mark) => mark switch
    {
        Mark.Stroke stroke => Of(stroke),
        Mark.Circle circle => $"<circle{Pair("cx", circle.Centre.X)}{Pair("cy", circle.Centre.Y)}{Pair("r", circle.Radius)}"
            + $"{Pair("fill", Colour(circle.Fill))} stroke=\"#000\"/>",
        Mark.Letters letters => Of(letters),
        _ => "",
    };

    private static string Of(Mark.Stroke stroke)
    {
        var points = string.Join(' ', stroke.Points.Select(point => $"{XmlText.Of(point.X)},{XmlText.Of(point.Y)}"));
        return $"<polyline{Pair("points", points)}{Pair("fill", Colour(stroke.Fill))} stroke=\"#000\"{Pair("stroke-width", stroke.Weight)}"
            + $"{(stroke.Dashed ? " stroke-dasharray=\"3 2\"" : "")}/>";
    }

    /// <summary>With its length, so that another font than ours runs into nothing.</summary>
    private static string Of(Mark.Letters letters)
    {
        var anchor = letters.Align switch
        {
            Align.Right => " text-anchor=\"end\"",
            Align.Middle => " text-anchor=\"middle\"",
            Align.Left => "",
            _ => throw Unnamed.Of(letters.Align),
        };
        var length = Typeface.Width(letters.Text, letters.Size, letters.Bold);
        return $"<text{Pair("x", letters.At.X)}{Pair("y", letters.At.Y)}{Pair("font-size", letters.Size)}{anchor}"
            + $"{(letters.Bold ? " font-weight=\"bold\"" : "")}{Pair("textLength", length)} lengthAdjust=\"spacingAndGlyphs\">"
            + $"{XmlText.Of(letters.Text)}</text>";
    }

    private static string Pair(string name, double value) => Pair(name, XmlText.Of(value));

    private static string Pair(string name, string value) => $" {name}=\"{value}\"";

    private static string Colour(Shade shade) => shade switch
    {
        Shade.Paper => "#fff",
        Shade.Light => "#ddd",
        Shade.Middle => "#999",
        Shade.Ink => "#000",
        Shade.None => "none",
        _ => throw Unnamed.Of(shade),
    };
}
