using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Reading;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>The count of findings and the worst of them, for the rows that are left beside the panel.</summary>
internal static class FindingRows
{
    /// <summary>Spaces that are named beside the panel; the list of findings names them all.</summary>
    private const int MostSpaces = 5;

    /// <summary>Those that are named of more, in a narrow list: the words matter more.</summary>
    private const int FewSpaces = 2;
    private const int Narrow = 30;

    /// <param name="snapshot">What they are about, with what is noted of the file itself.</param>
    public static ImmutableArray<FigureRow> Of(Snapshot snapshot, int columns, int rows)
    {
        var count = FindingCount.Of(snapshot);
        var isClean = count is { Errors: 0, Warnings: 0, Notes: 0 };
        var head = new FigureRow("Findings", isClean ? "none" : $"{count.Errors} E {count.Warnings} W {count.Notes} N", Tone.Strong);
        var lines = snapshot.Assessment!.Findings.SelectMany(finding => Lines(finding, columns))
            .Concat(snapshot.Diagnostics.SelectMany(noted => Plain(OfFile(snapshot, noted), columns, Tone.Plain)))
            .Concat(isClean && Unstated.Of(snapshot.Schedule!) is { Length: > 0 } unstated ? Plain($"Not stated: {string.Join(", ", unstated)}", columns, Tone.Faint) : []);
        return [head, .. lines.Take(Math.Max(0, rows - 1))];
    }

    /// <summary>What is noted of the file itself, with its line.</summary>
    public static string OfFile(Snapshot snapshot, Diagnostic noted) =>
        $"{Severity.Note.Mark} line {snapshot.Source.PositionOf(noted.Span.Start).Line}: {noted.Message}";

    private static IEnumerable<FigureRow> Plain(string sentence, int columns, Tone tone) =>
        Wrapped.Of(DisplayText.Clean(sentence), columns - 2).Select(line => new FigureRow(line, "", tone));

    private static IEnumerable<FigureRow> Lines(Finding finding, int columns)
    {
        var tone = SeverityTone.Of(finding.Severity);
        return Wrapped.Of($"{finding.Severity.Mark}{Where(finding, columns < Narrow ? FewSpaces : MostSpaces)} {finding.Message}", columns - 2)
            .Select(line => new FigureRow(line, "", tone));
    }

    private static string Where(Finding finding, int named) => finding.Spaces.Order().ToList() switch
    {
        [] => "",
        { Count: <= MostSpaces } spaces => $" {string.Join(",", spaces)}:",
        var spaces => $" {string.Join(",", spaces.Take(named))} +{Shown.Exactly(spaces.Count - named)}:",
    };
}
