using System.Globalization;
using PanelTui.Engine;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;
using PanelTui.Sheets.Layout;
using PanelTui.Tests.CommandLine;
using PanelTui.Tests.Saving;

namespace PanelTui.Tests.Sheets;

/// <summary>What holds for every sheet in every format.</summary>
public class SheetTests
{
    public static TheoryData<string, string> All
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var kind in SheetKind.All)
                foreach (var format in SheetFormat.All) rows.Add(kind.Name, format.Name);
            return rows;
        }
    }

    private static readonly CultureInfo CommaForPoint = new("")
    {
        NumberFormat = new NumberFormatInfo { NumberDecimalSeparator = ",", NumberGroupSeparator = ".", PercentDecimalSeparator = "," },
    };

    /// <summary>Each sheet in the formats that it comes in.</summary>
    public static IEnumerable<TheoryDataRow<string, string>> Written =>
        All.Where(row => Write(row.Data.Item1, row.Data.Item2, SheetCases.Named("Mill")) is not null);

    public static TheoryData<string> Kinds => [.. SheetKind.All.Select(kind => kind.Name)];

    /// <summary>Whatever was written before, and wherever in the world.</summary>
    [Theory, MemberData(nameof(Written))]
    public void The_same_file_gives_the_same_bytes(string kind, string format)
    {
        var here = CultureInfo.CurrentCulture;
        var bytes = Write(kind, format, SheetCases.Named("Mill")).ShouldNotBeNull();
        Write(kind, format, SheetCases.Named("Шахта")).ShouldNotBe(bytes);
        CultureInfo.CurrentCulture = CommaForPoint;
        try
        {
            Write(kind, format, SheetCases.Named("Mill")).ShouldBe(bytes);
        }
        finally
        {
            CultureInfo.CurrentCulture = here;
        }
    }

    [Fact]
    public void Another_run_in_another_time_zone_gives_the_same_bytes()
    {
        using var folder = new TempFolder();
        var (near, far) = (folder.File("near"), folder.File("far"));
        Ran.Of("print", "all", Shed.Example("packing-shed"), "-o", near).Code.ShouldBeLessThan(2);
        var program = Path.Combine(AppContext.BaseDirectory, "paneltui");
        Finished.Of("/usr/bin/env", "TZ=Pacific/Auckland", program, "print", "all", Shed.Example("packing-shed"), "-o", far).Code.ShouldBeLessThan(2);
        var names = Directory.GetFiles(near).Select(Path.GetFileName).AtLeastOne();
        Directory.GetFiles(far).Select(Path.GetFileName).ShouldBe(names, ignoreOrder: true);
        foreach (var name in names) File.ReadAllBytes(Path.Combine(far, name!)).ShouldBe(File.ReadAllBytes(Path.Combine(near, name!)), name);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Each_stands_in_text_markdown_html_and_pdf(string kind)
    {
        foreach (var format in new[] { "text", "markdown", "html", "pdf" })
            Write(kind, format, SheetCases.Named("Mill")).ShouldNotBeNull();
    }

    [Theory, MemberData(nameof(All))]
    public void Each_defers_to_the_authority_having_jurisdiction(string kind, string format)
    {
        if (format == "pdf" || Write(kind, format, SheetCases.Named("Mill")) is not { } bytes) return;
        System.Text.Encoding.UTF8.GetString(bytes).ReplaceLineEndings(" ").ShouldContain("authority having");
    }

    [Theory, MemberData(nameof(All))]
    public void None_holds_a_control_character_or_a_printers_command(string kind, string format)
    {
        if (format == "pdf" || Write(kind, format, SheetCases.Named(SheetCases.Hostile)) is not { } bytes) return;
        bytes.AtLeastOne().ShouldAllBe(one => one >= 32 || one == '\n' || one == '\r');
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_panel_without_anything_has_every_sheet(string kind)
    {
        var empty = SheetCases.Read("schedule: 1\npanel: {system: 120 V 1ph 2W, spaces: 1}\n");
        foreach (var format in SheetFormat.All.AtLeastOne()) Should.NotThrow(() => Write(kind, format.Name, empty));
    }

    /// <summary>Two breakers in one space: nobody is to build by the sheet unwarned, in whatever format he holds it.</summary>
    [Theory, MemberData(nameof(All))]
    public void Errors_that_are_open_stand_on_the_sheet(string kind, string format)
    {
        var text = SheetCases.TextNamed("Mill").Replace("space: 2,", "space: 1,", StringComparison.Ordinal);
        var broken = SheetCases.Read(text);
        SheetKind.Find(kind)!.Make(broken, SheetChoices.Default).Blocks[0].ShouldBeOfType<Block.Paragraph>().Text.ShouldStartWith("NOT SETTLED: ");
        if (format == "pdf" || Write(kind, format, broken) is not { } bytes) return;
        System.Text.Encoding.UTF8.GetString(bytes).ReplaceLineEndings(" ").ShouldContain("NOT SETTLED");
    }

    [Theory]
    [InlineData("Lagerhaus Nº 2 · Küche", "Lagerhaus Nº 2 · Küche")]
    [InlineData("Пилорама, станок", "Пилорама, станок")]
    [InlineData("厨房 pump", "[U+53A8][U+623F] pump")]
    public void A_character_that_the_font_lacks_is_set_as_its_code_point(string name, string set) =>
        Typeface.Settable(name).ShouldBe(set);

    /// <summary>docs/sheets.md has a row for each sheet: which formats it comes in.</summary>
    [Theory, MemberData(nameof(Kinds))]
    public void The_page_of_the_sheets_names_the_formats_of_each(string kind)
    {
        var formats = SheetFormat.All.Where(format => Write(kind, format.Name, SheetCases.Named("Mill")) is not null).Select(format => format.Name);
        var page = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "sheets.md"));
        page.ShouldContain($"| `{kind}` | {string.Join(", ", formats)} |");
    }

    private static byte[]? Write(string kind, string format, Assessment assessment) =>
        SheetFormat.Find(format)!.Write(SheetKind.Find(kind)!.Make(assessment, SheetChoices.Default), SheetChoices.Default);
}
