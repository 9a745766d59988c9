using System.Collections.Immutable;
using PanelTui.CommandLine;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;

namespace PanelTui.Editing;

/// <summary>Asks for the file that a sheet is written to; its ending names the format.</summary>
internal sealed class SheetForm(SheetKind kind, string schedule) : Form
{
    public override ImmutableArray<FormField> Fields { get; } =
    [
        new("Write to", Path.Combine(Path.GetDirectoryName(schedule) ?? "", $"{kind.Name}.pdf"), 0,
            "a new file ending in .pdf, .html, .md, .txt, .csv or .svg; an existing file is not overwritten"),
    ];

    public override bool Changes => false;

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts)
    {
        var path = texts[0].Trim();
        if (SheetFormat.ByEnding(path) is not { } format)
            return new FormRefusal(0, $"{path} ends in no format: write .pdf, .html, .md, .txt, .csv or .svg");
        if (format.Write(kind.Make(session.Assessment, SheetChoices.Default), SheetChoices.Default) is not { } bytes)
            return new FormRefusal(0, $"the {kind.Name} sheet makes no sense as {format.Name}");
        if (OutputFile.Write(path, bytes, force: false) is { } problem) return new FormRefusal(0, problem.Sentence);
        session.Say($"Wrote {path}");
        return null;
    }
}
