using System.Text;
using PanelTui.Engine;

namespace PanelTui.Sheets.Formats;

/// <summary>A sheet as one HTML page that is XML as well: no script, no link, nothing from outside.</summary>
internal static class HtmlFormat
{
    private const string Style = """
        body { font: 11pt 'DejaVu Sans', Verdana, sans-serif; margin: 2em auto; max-width: 60em; padding: 0 1em; color: #000; background: #fff }
        table { border-collapse: collapse; width: 100%; margin: .6em 0 }
        th, td { border-bottom: 1px solid #bbb; padding: .2em .5em; text-align: left; vertical-align: top }
        th { border-bottom: 2px solid #000 }
        .right { text-align: right } .middle { text-align: center }
        dl { display: grid; grid-template-columns: max-content auto; gap: .15em 1em } dt { font-weight: bold } dd { margin: 0 }
        svg { max-width: 100%; height: auto } footer { border-top: 1px solid #000; font-size: 80%; margin-top: 2em; padding-top: .5em }
        .sign { border-top: 1px solid #000; display: inline-block; margin: 4em 2em 0 0; min-width: 18em }
        """;

    public static string Of(Sheet sheet)
    {
        var page = new StringBuilder();
        page.Append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<title>")
            .Append(XmlText.Of(sheet.Title)).Append("</title>\n<style>\n").Append(Style.ReplaceLineEndings("\n")).Append("\n</style>\n</head>\n<body>\n<h1>")
            .Append(XmlText.Of(sheet.Title)).Append("</h1>\n");
        foreach (var block in sheet.Blocks) page.Append(Of(block)).Append('\n');
        return page.Append("<footer>").Append(XmlText.Of(sheet.Foot)).Append("</footer>\n</body>\n</html>\n").ToString();
    }

    private static string Of(Block block) => block switch
    {
        Block.Heading heading => $"<h2>{XmlText.Of(heading.Text)}</h2>",
        Block.Paragraph paragraph => $"<p>{XmlText.Of(paragraph.Text)}</p>",
        Block.Facts facts => $"<dl>{string.Concat(facts.Items.Select(fact => $"\n<dt>{XmlText.Of(fact.Name)}</dt><dd>{XmlText.Of(fact.Value)}</dd>"))}\n</dl>",
        Block.Grid grid => Of(grid.Table),
        Block.Picture picture => SvgFormat.Element(picture.Drawing),
        Block.Signatures signatures => string.Concat(signatures.Lines.Select(line => $"<div class=\"sign\">{XmlText.Of(line)}</div>")),
        _ => "",
    };

    private static string Of(Table table)
    {
        var html = new StringBuilder("<table>\n<thead><tr>");
        foreach (var column in table.Columns) html.Append($"<th{Class(column)}>{XmlText.Of(column.Title)}</th>");
        html.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            for (var at = 0; at < row.Length; at++) html.Append($"<td{Class(table.Columns[at])}>{XmlText.Of(row[at].Text)}</td>");
            html.Append("</tr>\n");
        }

        return html.Append("</tbody>\n</table>").ToString();
    }

    private static string Class(Column column) => column.Align switch
    {
        Align.Right => " class=\"right\"",
        Align.Middle => " class=\"middle\"",
        Align.Left => "",
        _ => throw Unnamed.Of(column.Align),
    };
}
