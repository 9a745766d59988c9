using System.Collections.Immutable;
using PanelTui.Engine;

namespace PanelTui.Sheets;

/// <summary>A kind of sheet: the word it is asked by, what it is, and how it is drawn up.</summary>
internal sealed record SheetKind(string Name, string Summary, Func<Assessment, SheetChoices, Sheet> DrawnUp)
{
    public static readonly ImmutableArray<SheetKind> All =
    [
        new("directory", "the directory on the panel's door", (assessment, _) => DirectorySheet.Of(assessment)),
        new("labels", "a label for each circuit", LabelSheet.Of),
        new("signs", "the signs that this installation asks for", (assessment, _) => SignSheet.Of(assessment)),
        new("loads", "the load calculation, step by step", (assessment, _) => LoadSheet.Of(assessment)),
        new("diagram", "the one-line diagram", (assessment, _) => DiagramSheet.Of(assessment)),
        new("parts", "breakers, wire, fillers, transfer equipment", (assessment, _) => PartsSheet.Of(assessment)),
        new("plots", "leg loads and scenarios as bars", (assessment, _) => PlotSheet.Of(assessment)),
    ];

    public static SheetKind? Find(string name) => All.FirstOrDefault(kind => kind.Name == name);

    /// <summary>The sheet; one of a schedule that breaks rules says so before anything else.</summary>
    public Sheet Make(Assessment assessment, SheetChoices choices)
    {
        var sheet = DrawnUp(assessment, choices);
        return OpenErrors.Of(assessment) is { } open
            ? sheet with { Open = open, Blocks = sheet.Blocks.Insert(0, new Block.Paragraph(open)) }
            : sheet;
    }
}
