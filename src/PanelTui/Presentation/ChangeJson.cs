using System.Text.Json;
using PanelTui.Documents.Comparing;

namespace PanelTui.Presentation;

/// <summary>What changed between two versions, as JSON.</summary>
internal static class ChangeJson
{
    public static string Of(ScheduleChanges changes) => JsonOutput.Diff.Of(json =>
    {
        json.WriteBoolean("same", changes.AreNone);
        json.WriteStartArray("changes");
        foreach (var fact in changes.Facts) Write(json, fact);
        json.WriteEndArray();
        json.WriteStartArray("figures");
        foreach (var figure in ChangedFigure.Of(changes.Before, changes.After)) Write(json, figure);
        json.WriteEndArray();
        FindingJson.WriteArray(json, "findings_came", changes.Came);
        FindingJson.WriteArray(json, "findings_went", changes.Went);
    });

    private static void Write(Utf8JsonWriter json, ScheduleChange fact)
    {
        json.WriteStartObject();
        json.WriteString("kind", fact.Kind.Word);
        json.WriteString("section", fact.Section);
        json.WriteString("subject", fact.Subject);
        json.WriteString("text", fact.Text);
        json.WriteString("id", fact.Id);
        json.WriteStartArray("spaces");
        foreach (var space in fact.Spaces) json.WriteStringValue($"{space}");
        json.WriteEndArray();
        json.WriteString("key", fact.Key);
        json.WriteString("before", fact.Before);
        json.WriteString("after", fact.After);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ChangedFigure figure)
    {
        json.WriteStartObject();
        json.WriteString("name", figure.Name);
        json.WriteString("before", figure.Before);
        json.WriteString("after", figure.After);
        json.WriteEndObject();
    }
}
