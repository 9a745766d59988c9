using PanelTui.Documents;
using PanelTui.Documents.Reading;
using PanelTui.Documents.Text;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>What `check` prints for people: a line a finding with its place, then what to check, then the count.</summary>
internal static class CheckReport
{
    public static IEnumerable<string> Lines(string name, Snapshot snapshot)
    {
        foreach (var diagnostic in snapshot.Diagnostics) yield return Line(name, snapshot, diagnostic);
        if (snapshot.Assessment is not { } assessment)
        {
            yield return $"{DisplayText.Clean(name)}: not readable as a schedule";
            yield break;
        }

        foreach (var finding in assessment.Findings)
        {
            yield return Line(name, snapshot, finding, finding.Severity.Word);
            yield return DisplayText.Clean($"    {finding.Mend}");
        }

        foreach (var (finding, because) in assessment.Accepted)
        {
            yield return Line(name, snapshot, finding, $"accepted {finding.Severity.Word}");
            yield return DisplayText.Clean($"    because: {because}");
        }

        yield return $"{DisplayText.Clean(name)}: {FindingCount.Of(snapshot)}";
    }

    /// <summary>`FILE:LINE:COLUMN: error: what was found and what was expected [code]`.</summary>
    public static string Line(string name, Snapshot snapshot, Diagnostic diagnostic)
    {
        var severity = diagnostic.IsError ? "error" : "note";
        return DisplayText.Clean($"{name}:{PlaceOf(snapshot, diagnostic.Span)}: {severity}: {diagnostic.Message} [{diagnostic.Code}]");
    }

    private static string Line(string name, Snapshot snapshot, Finding finding, string kind)
    {
        var spans = snapshot.Places.SpansOf(finding);
        var lines = spans.Skip(1).Select(span => snapshot.Source.PositionOf(span.Start).Line).Distinct().ToList();
        var also = lines.Count == 0 ? "" : $" (also {(lines.Count == 1 ? "line" : "lines")} {string.Join(", ", lines)})";
        return DisplayText.Clean(
            $"{name}:{PlaceOf(snapshot, spans[0])}: {kind}: {finding.Message}{also} [{finding.Rule}] ({finding.Cite})");
    }

    private static string PlaceOf(Snapshot snapshot, TextSpan? span)
    {
        var place = snapshot.Source.PositionOf(span?.Start ?? 0);
        return $"{place.Line}:{place.Column}";
    }
}
