using System.Text.Json;
using PanelTui.Documents.Text;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>What `check --json` prints: every diagnostic and every finding with its file and place.</summary>
internal static class CheckJson
{
    public static void Write(TextWriter output, IReadOnlyList<ScheduleInput> inputs) => output.WriteLine(JsonText.Of(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("schema", CalcJson.Schema);
        json.WriteStartArray("files");
        foreach (var input in inputs) WriteFile(json, input);
        json.WriteEndArray();
        json.WriteStartArray("diagnostics");
        foreach (var input in inputs) WriteDiagnostics(json, input);
        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (var input in inputs) WriteFindings(json, input);
        json.WriteEndArray();
        json.WriteStartArray("accepted");
        foreach (var input in inputs) WriteAccepted(json, input);
        json.WriteEndArray();
        json.WriteEndObject();
    }));

    private static void WriteFile(Utf8JsonWriter json, ScheduleInput input)
    {
        json.WriteStartObject();
        json.WriteString("file", input.Name);
        json.WriteBoolean("readable", input.Snapshot?.Assessment is not null);
        json.WriteString("problem", input.Problem);
        json.WriteEndObject();
    }

    private static void WriteDiagnostics(Utf8JsonWriter json, ScheduleInput input)
    {
        foreach (var diagnostic in input.Snapshot?.Diagnostics ?? [])
        {
            json.WriteStartObject();
            WritePlace(json, input, diagnostic.Span);
            json.WriteString("code", diagnostic.Code);
            json.WriteString("severity", diagnostic.IsError ? "error" : "note");
            json.WriteString("message", diagnostic.Message);
            json.WriteEndObject();
        }
    }

    private static void WriteFindings(Utf8JsonWriter json, ScheduleInput input)
    {
        if (input.Snapshot is not { Assessment: { } assessment } snapshot) return;
        foreach (var finding in assessment.Findings)
        {
            json.WriteStartObject();
            WritePlace(json, input, snapshot.Places.SpanOf(finding));
            FindingJson.WriteFields(json, finding);
            json.WriteEndObject();
        }
    }

    private static void WriteAccepted(Utf8JsonWriter json, ScheduleInput input)
    {
        if (input.Snapshot is not { Assessment: { } assessment } snapshot) return;
        foreach (var accepted in assessment.Accepted)
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
