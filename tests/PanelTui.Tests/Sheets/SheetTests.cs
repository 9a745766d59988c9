using PanelTui.Engine;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;

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

    public static TheoryData<string> Kinds => [.. SheetKind.All.Select(kind => kind.Name)];

    [Theory, MemberData(nameof(All))]
    public void The_same_file_gives_the_same_bytes(string kind, string format) =>
        Write(kind, format, SheetCases.Named("Mill")).ShouldBe(Write(kind, format, SheetCases.Named("Mill")));

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
        bytes.ShouldAllBe(one => one >= 32 || one == '\n' || one == '\r');
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_panel_without_anything_has_every_sheet(string kind)
    {
        var empty = SheetCases.Read("schedule: 1\npanel: {system: 120 V 1ph 2W, spaces: 1}\n");
        foreach (var format in SheetFormat.All) Should.NotThrow(() => Write(kind, format.Name, empty));
    }

    private static byte[]? Write(string kind, string format, Assessment assessment) =>
        SheetFormat.Find(format)!.Write(SheetKind.Find(kind)!.Make(assessment, SheetChoices.Default), SheetChoices.Default);
}
