using PanelTui.Documents;
using PanelTui.Documents.Reading;
using PanelTui.Documents.Text;
using PanelTui.Engine;
using PanelTui.Engine.Rules;

namespace PanelTui.CommandLine;

/// <summary>What `check` prints for people: a line a finding with its place, then what to check, then the count.</summary>
internal static class CheckReport
{
    /// <param name="lowest">What is less severe is left out, and still counted.</param>
    public static IEnumerable<ReportLine> Lines(string name, Snapshot snapshot, Severity lowest = Severity.Note)
    {
        foreach (var diagnostic in snapshot.Diagnostics.Where(one => SeverityFilter.Shows(lowest, one))) yield return Of(name, snapshot, diagnostic);
        foreach (var finding in snapshot.Assessment?.Findings.Where(one => SeverityFilter.Shows(lowest, one.Severity)) ?? [])
        {
            yield return Of(name, snapshot, finding, "");
            yield return ReportLine.Plain($"    {finding.Mend}");
        }

        foreach (var (finding, because) in snapshot.Assessment?.Accepted.Where(one => SeverityFilter.Shows(lowest, one.Finding.Severity)) ?? [])
        {
            yield return Of(name, snapshot, finding, "accepted ");
            yield return ReportLine.Plain($"    because: {because}");
        }

        yield return ReportLine.Plain(CheckSummary.OfFile(name, snapshot, lowest));
    }

    /// <summary>`FILE:LINE:COLUMN: error: what was found and what was expected [code]`.</summary>
    public static string Line(string name, Snapshot snapshot, Diagnostic diagnostic) => Of(name, snapshot, diagnostic).Text;

    private static ReportLine Of(string name, Snapshot snapshot, Diagnostic diagnostic) => new(
        $"{name}:{PlaceOf(snapshot, diagnostic.Span)}: ", diagnostic.IsError ? "error" : "note", $": {diagnostic.Message} [{diagnostic.Code}]",
        diagnostic.IsError ? Tint.Bad : Tint.Remark);

    private static ReportLine Of(string name, Snapshot snapshot, Finding finding, string standing)
    {
        var spans = snapshot.Places.SpansOf(finding);
        var lines = spans.Skip(1).Select(span => snapshot.Source.PositionOf(span.Start).Line).Distinct().ToList();
        var also = lines.Count == 0 ? "" : $" (also {(lines.Count == 1 ? "line" : "lines")} {string.Join(", ", lines)})";
        return new ReportLine(
            $"{name}:{PlaceOf(snapshot, spans[0])}: {standing}", finding.Severity.Word, $": {finding.Message}{also} [{finding.Rule}] ({finding.Cite})",
            TintOf(finding.Severity));
    }

    private static Tint TintOf(Severity severity) => severity switch
    {
        Severity.Error => Tint.Bad,
        Severity.Warning => Tint.Doubtful,
        Severity.Note => Tint.Remark,
        _ => throw Unnamed.Of(severity),
    };

    private static string PlaceOf(Snapshot snapshot, TextSpan? span)
    {
        var place = snapshot.Source.PositionOf(span?.Start ?? 0);
        return $"{place.Line}:{place.Column}";
    }
}
