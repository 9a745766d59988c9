using System.Text.Json;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>Findings as a JSON array, the same in `calc` and in `check`.</summary>
internal static class FindingJson
{
    public static void WriteArray(Utf8JsonWriter json, string name, IEnumerable<Finding> findings)
    {
        json.WriteStartArray(name);
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            WriteFields(json, finding);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The findings that the schedule accepts, each with its reason.</summary>
    public static void WriteAccepted(Utf8JsonWriter json, IEnumerable<AcceptedFinding> accepted)
    {
        json.WriteStartArray("accepted");
        foreach (var one in accepted)
        {
            json.WriteStartObject();
            WriteFields(json, one);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void WriteFields(Utf8JsonWriter json, AcceptedFinding accepted)
    {
        WriteFields(json, accepted.Finding);
        json.WriteString("because", accepted.Because);
    }

    /// <summary>Into an object that is already begun.</summary>
    public static void WriteFields(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("rule", finding.Rule);
        json.WriteString("severity", finding.Severity.Word);
        json.WriteStartArray("spaces");
        foreach (var space in finding.Spaces)
        {
            if (space.IsHalf) json.WriteStringValue($"{space}");
            else json.WriteNumberValue(space.Number);
        }

        json.WriteEndArray();
        json.WriteString("message", finding.Message);
        json.WriteString("mend", finding.Mend);
        json.WriteString("cite", $"{finding.Cite}");
    }
}
