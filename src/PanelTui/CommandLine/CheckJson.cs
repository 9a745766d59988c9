using System.Text.Json;
using PanelTui.Documents.Text;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>What `check --json` prints: every diagnostic and every finding with its file and place.</summary>
internal static class CheckJson
{
    /// <param name="lowest">What is less severe is left out.</param>
    public static void Write(TextWriter output, IReadOnlyList<ScheduleInput> inputs, Severity lowest) => output.WriteLine(JsonOutput.Check.Of(json =>
    {
        json.WriteStartArray("files");
        foreach (var input in inputs) WriteFile(json, input);
        json.WriteEndArray();
        json.WriteStartArray("diagnostics");
        foreach (var input in inputs) WriteDiagnostics(json, input, lowest);
        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (var input in inputs) WriteFindings(json, input, lowest);
        json.WriteEndArray();
        json.WriteStartArray("accepted");
        foreach (var input in inputs) WriteAccepted(json, input, lowest);
        json.WriteEndArray();
    }));

    private static void WriteFile(Utf8JsonWriter json, ScheduleInput input)
    {
        json.WriteStartObject();
        json.WriteString("file", input.Name);
        json.WriteBoolean("readable", input.Snapshot?.Assessment is not null);
        json.WriteString("problem", input.Problem);
        if (input.At is { } at)
        {
            json.WriteNumber("line", at.Line);
            json.WriteNumber("column", at.Column);
        }
        else
        {
            json.WriteNull("line");
            json.WriteNull("column");
        }

        json.WriteEndObject();
    }

    private static void WriteDiagnostics(Utf8JsonWriter json, ScheduleInput input, Severity lowest)
    {
        foreach (var diagnostic in (input.Snapshot?.Diagnostics ?? []).Where(one => SeverityFilter.Shows(lowest, one)))
        {
            json.WriteStartObject();
            WritePlace(json, input, diagnostic.Span);
            json.WriteString("code", diagnostic.Code);
            json.WriteString("severity", diagnostic.IsError ? "error" : "note");
            json.WriteString("message", diagnostic.Message);
            json.WriteEndObject();
        }
    }

    private static void WriteFindings(Utf8JsonWriter json, ScheduleInput input, Severity lowest)
    {
        if (input.Snapshot is not { Assessment: { } assessment } snapshot) return;
        foreach (var finding in assessment.Findings.Where(one => SeverityFilter.Shows(lowest, one.Severity)))
        {
            json.WriteStartObject();
            WritePlace(json, input, snapshot.Places.SpanOf(finding));
            FindingJson.WriteFields(json, finding);
            json.WriteEndObject();
        }
    }

    private static void WriteAccepted(Utf8JsonWriter json, ScheduleInput input, Severity lowest)
    {
        if (input.Snapshot is not { Assessment: { } assessment } snapshot) return;
        foreach (var accepted in assessment.Accepted.Where(one => SeverityFilter.Shows(lowest, one.Finding.Severity)))
        {
            json.WriteStartObject();
            WritePlace(json, input, snapshot.Places.SpanOf(accepted.Finding));
            FindingJson.WriteFields(json, accepted);
            json.WriteEndObject();
        }
    }

    private static void WritePlace(Utf8JsonWriter json, ScheduleInput input, TextSpan? span)
    {
        var place = input.Snapshot!.Source.PositionOf(span?.Start ?? 0);
        json.WriteString("file", input.Name);
        json.WriteNumber("line", place.Line);
        json.WriteNumber("column", place.Column);
    }
}
