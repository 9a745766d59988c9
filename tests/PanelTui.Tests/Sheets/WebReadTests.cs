using System.Globalization;
using System.Text;
using System.Xml.Linq;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Microsoft.VisualBasic.FileIO;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;

namespace PanelTui.Tests.Sheets;

/// <summary>Pages, pictures and records of every example, read by libraries that had no part in writing them.</summary>
public class WebReadTests
{
    public static MatrixTheoryData<string, string> OfCircuits => new(SheetCases.ExampleNames, SheetCases.NamesCircuits);

    public static MatrixTheoryData<string, string> Pages =>
        new(SheetCases.ExampleNames, SheetKind.All.Select(kind => kind.Name));

    public static MatrixTheoryData<string, string> Pictures =>
        new(SheetCases.ExampleNames, ["diagram", "plots", "labels", "signs"]);

    public static MatrixTheoryData<string, string> Lists =>
        new(SheetCases.ExampleNames, ["directory", "labels", "signs", "loads", "parts", "plots"]);

    /// <summary>Strict: each of the parse errors that the HTML standard names is an exception.</summary>
    [Theory, MemberData(nameof(Pages))]
    public void A_browser_reads_the_page_without_an_error(string example, string kind)
    {
        using var page = new HtmlParser(new HtmlParserOptions { IsStrictMode = true })
            .ParseDocument(Text(example, kind, SheetFormat.Html));
        page.CompatMode.ShouldBe("CSS1Compat", "as the standard has it, not as old browsers had it");
        page.Title.ShouldNotBeNull().ShouldContain(SheetCases.Example(example).Schedule.Panel.Name!);
        page.QuerySelector("footer").ShouldNotBeNull().TextContent.ShouldContain("authority having jurisdiction");
        page.QuerySelectorAll("tr").OfType<IHtmlTableRowElement>()
            .Where(row => row.Cells.Length != row.Closest("table")!.QuerySelectorAll("th").Length).ShouldBeEmpty();
        page.QuerySelectorAll("script, link, img, iframe, object").ShouldBeEmpty();
    }

    [Theory, MemberData(nameof(OfCircuits))]
    public void The_page_names_every_circuit_whole(string example, string kind)
    {
        using var page = new HtmlParser().ParseDocument(Text(example, kind, SheetFormat.Html));
        var text = ReadBack.Joined(page.Body!.GetNodes<IText>().Select(node => node.Data));
        foreach (var name in SheetCases.CircuitsOn(kind, example).AtLeastOne()) text.ShouldContain(name);
    }

    /// <summary>Lengths as written: with them, another font than ours takes the same room.</summary>
    [Theory, MemberData(nameof(Pictures))]
    public void Nothing_on_a_picture_lies_outside_it_or_is_too_small_to_read(string example, string kind)
    {
        var picture = XDocument.Parse(Text(example, kind, SheetFormat.Svg)).Root!;
        var view = Numbers(picture.Attribute("viewBox")!.Value);
        picture.Attribute("width")!.Value.ShouldBe($"{view[2].ToString(CultureInfo.InvariantCulture)}pt");
        var boxes = picture.Descendants().Where(mark => mark.Name.LocalName is "text" or "polyline" or "circle")
            .Select(Box).AtLeastOne();
        boxes.ShouldAllBe(box => box.Left >= view[0] && box.Top >= view[1] && box.Right <= view[0] + view[2]
            && box.Bottom <= view[1] + view[3]);
        var letters = picture.Descendants().Where(mark => mark.Name.LocalName == "text").AtLeastOne();
        letters.Min(text => Number(text, "font-size")).ShouldBeGreaterThanOrEqualTo(6);
        ReadBack.Joined(letters.Select(text => text.Value)).ShouldContain("authority having jurisdiction");
    }

    [Theory, MemberData(nameof(Lists))]
    public void Rows_of_a_list_have_one_length_and_hold_every_character(string example, string kind)
    {
        using var text = new StringReader(Text(example, kind, SheetFormat.Csv));
        using var reader = new TextFieldParser(text) { TextFieldType = FieldType.Delimited };
        reader.SetDelimiters(",");
        var rows = new List<string[]>();
        while (reader.ReadFields() is { } row) rows.Add(row);
        rows.Count.ShouldBeGreaterThan(2);
        rows.ShouldAllBe(row => row.Length == rows[0].Length);
        var records = SheetKind.Find(kind)!.Make(SheetCases.Example(example), SheetChoices.Default)
            .Records.ShouldNotBeNull();
        rows[0].ShouldBe(records.Columns.Select(column => column.Title));
        rows[1..^1].Select(row => string.Join('|', row))
            .ShouldBe(records.Rows.Select(row => string.Join('|', row.Select(cell => cell.Text))));
    }

    private static string Text(string example, string kind, SheetFormat format) =>
        Encoding.UTF8.GetString(ReadBack.Written(SheetCases.Example(example), kind, format).ShouldNotBeNull());

    private static (double Left, double Top, double Right, double Bottom) Box(XElement mark)
    {
        switch (mark.Name.LocalName)
        {
            case "circle":
                var (x, y, radius) = (Number(mark, "cx"), Number(mark, "cy"), Number(mark, "r"));
                return (x - radius, y - radius, x + radius, y + radius);
            case "polyline":
                var points = Numbers(mark.Attribute("points")!.Value);
                var (across, down) = (points.Where((_, at) => at % 2 == 0).ToList(),
                    points.Where((_, at) => at % 2 == 1).ToList());
                return (across.Min(), down.Min(), across.Max(), down.Max());
            default:
                var (length, size, base_) = (Number(mark, "textLength"), Number(mark, "font-size"), Number(mark, "y"));
                var before = mark.Attribute("text-anchor")?.Value switch { "end" => length, "middle" => length / 2, _ => 0 };
                var left = Number(mark, "x") - before;
                return (left, base_ - size, left + length, base_ + (size / 4));
        }
    }

    private static double Number(XElement mark, string name) =>
        double.Parse(mark.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static double[] Numbers(string text) =>
        [.. text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
            .Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
}
