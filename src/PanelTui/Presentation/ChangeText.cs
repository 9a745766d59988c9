using PanelTui.Documents.Comparing;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>What changed between two versions, as a page of text or of Markdown.</summary>
internal static class ChangeText
{
    public static IEnumerable<string> Plain(ScheduleChanges changes) => Lines(changes).Select(line => DisplayText.Clean(line));

    public static IEnumerable<string> Markdown(ScheduleChanges changes) => MarkdownLines(changes).Select(line => DisplayText.Clean(line));

    private static IEnumerable<string> Lines(ScheduleChanges changes)
    {
        foreach (var fact in changes.Facts) yield return $"{fact.Kind.Mark} {fact}";
        ChangedFigure[] figures = [.. ChangedFigure.Of(changes.Before, changes.After)];
        if (figures.Length > 0) yield return "";
        foreach (var figure in figures) yield return $"  {figure.Name,-20} {figure.Before ?? "none",18} -> {figure.After ?? "none"}";
        foreach (var (title, findings) in Findings(changes))
        {
            yield return "";
            yield return title;
            foreach (var finding in findings) yield return $"  {finding.Severity.Word}: {finding.Message} [{finding.Rule}]";
        }
    }

    private static IEnumerable<string> MarkdownLines(ScheduleChanges changes)
    {
        foreach (var fact in changes.Facts) yield return $"- {Escaped(fact.ToString())}";
        ChangedFigure[] figures = [.. ChangedFigure.Of(changes.Before, changes.After)];
        if (figures.Length > 0)
        {
            yield return "";
            yield return "| figure | before | after |";
            yield return "| --- | ---: | ---: |";
            foreach (var figure in figures) yield return $"| {figure.Name} | {figure.Before ?? "none"} | {figure.After ?? "none"} |";
        }

        foreach (var (title, findings) in Findings(changes))
        {
            yield return "";
            yield return $"**{title}**";
            yield return "";
            foreach (var finding in findings) yield return $"- {finding.Severity.Word}: {Escaped(finding.Message)} `{finding.Rule}`";
        }
    }

    private static IEnumerable<(string Title, IReadOnlyCollection<Finding> Findings)> Findings(ScheduleChanges changes)
    {
        if (!changes.Came.IsEmpty) yield return ("Findings that came", changes.Came);
        if (!changes.Went.IsEmpty) yield return ("Findings that went", changes.Went);
    }

    private static string Escaped(string text) =>
        string.Concat(text.Select(letter => "\\`*_{}[]<>#|".Contains(letter, StringComparison.Ordinal) ? $"\\{letter}" : $"{letter}"));
}
