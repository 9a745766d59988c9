using System.Text;
using System.Xml.Linq;
using PanelTui.Engine;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;

namespace PanelTui.Tests.Sheets;

/// <summary>Text of a file becomes no markup, no formula and no link (CWE-79, CWE-1236).</summary>
public class HarmlessTests
{
    public static TheoryData<string> Kinds => [.. SheetKind.All.Select(kind => kind.Name)];

    [Theory, MemberData(nameof(Kinds))]
    public void A_name_adds_no_element_to_the_page(string kind)
    {
        var page = Xml(Text(kind, SheetFormat.Html, SheetCases.Named(SheetCases.Hostile)));
        page.Descendants().Select(element => element.Name.LocalName).ShouldNotContain("script");
        page.Descendants().Where(element => element.Name.LocalName is "a" or "img" or "iframe").ShouldBeEmpty();
        page.Descendants().Attributes().AtLeastOne().ShouldAllBe(one => !one.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
    }

    [Theory, InlineData("diagram"), InlineData("plots"), InlineData("labels"), InlineData("signs")]
    public void A_name_adds_no_element_to_the_picture(string kind)
    {
        string[] known = ["svg", "title", "rect", "polyline", "circle", "text"];
        Xml(Text(kind, SheetFormat.Svg, SheetCases.Named(SheetCases.Hostile))).Descendants()
            .AtLeastOne().ShouldAllBe(element => known.Contains(element.Name.LocalName));
    }

    [Theory]
    [InlineData("=cmd|'/c calc'!A1")]
    [InlineData("-1+1")]
    [InlineData("@SUM(A1)")]
    [InlineData("  =1+1")]
    [InlineData("＝1+1")]
    public void A_name_is_no_formula_in_a_spreadsheet(string name)
    {
        var csv = Text("directory", SheetFormat.Csv, SheetCases.Named(name));
        csv.ShouldContain($"'{name.Trim()}", Case.Sensitive);
    }

    [Fact]
    public void A_number_stays_a_number() =>
        Text("directory", SheetFormat.Csv, SheetCases.Named("Mill")).ShouldContain("1,left,A,Mill,20,1,1,,");

    [Theory]
    [InlineData("a|b", "a\\|b")]
    [InlineData("<b>", "\\<b\\>")]
    [InlineData("# not a title", "\\# not a title")]
    [InlineData("1. not a list", "1\\. not a list")]
    [InlineData("- not a list", "\\- not a list")]
    [InlineData("http://x", "http\\://x")]
    [InlineData("20 A, east-wall", "20 A, east-wall")]
    public void A_name_is_no_markdown(string name, string written) => MarkdownFormat.Escaped(name).ShouldBe(written);

    private static XDocument Xml(string text) => XDocument.Parse(text);

    private static string Text(string kind, SheetFormat format, Assessment assessment) => Encoding.UTF8.GetString(
        format.Write(SheetKind.Find(kind)!.Make(assessment, SheetChoices.Default), SheetChoices.Default).ShouldNotBeNull());
}
