using System.Collections.Immutable;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>The count of findings and the worst of them, for the rows that are left beside the panel.</summary>
internal static class FindingRows
{
    /// <summary>Spaces that are named beside the panel; the list of findings names them all.</summary>
    private const int MostSpaces = 5;

    public static ImmutableArray<FigureRow> Of(IReadOnlyList<Finding> findings, int columns, int rows)
    {
        var count = FindingCount.Of(findings);
        var head = new FigureRow("Findings", findings.Count == 0 ? "none" : $"{count.Errors} E {count.Warnings} W {count.Notes} N", Tone.Strong);
        var lines = findings.SelectMany(finding => Lines(finding, columns)).Take(Math.Max(0, rows - 1));
        return [head, .. lines];
    }

    private static IEnumerable<FigureRow> Lines(Finding finding, int columns)
    {
        var tone = finding.Severity switch
        {
            Severity.Error => Tone.Error,
            Severity.Warning => Tone.Warning,
            _ => Tone.Plain,
        };
        return Wrapped.Of($"{Words.Mark(finding.Severity)}{Where(finding)} {finding.Message}", columns - 2)
            .Select(line => new FigureRow(line, "", tone));
    }

    private static string Where(Finding finding) => finding.Spaces.Length switch
    {
        0 => "",
        <= MostSpaces => $" {string.Join(",", finding.Spaces)}:",
        var all => $" {string.Join(",", finding.Spaces.Take(MostSpaces))} +{Shown.Exactly(all - MostSpaces)}:",
    };
}
