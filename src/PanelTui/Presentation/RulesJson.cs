using System.Text.Json;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>Rules as JSON: what each asks, why, what to do, and what it rests on.</summary>
internal static class RulesJson
{
    public static string Of(IEnumerable<CodeRule> rules) => JsonOutput.Rules.Of(json =>
    {
        json.WriteStartArray("rules");
        foreach (var rule in rules) Write(json, rule);
        json.WriteEndArray();
    });

    private static void Write(Utf8JsonWriter json, CodeRule rule)
    {
        json.WriteStartObject();
        json.WriteString("rule", rule.Name);
        json.WriteString("severity", rule.Severity.Word);
        json.WriteString("summary", rule.Summary);
        json.WriteString("why", rule.Why);
        json.WriteString("advice", rule.Advice);
        json.WriteStrings("basis", RuleBasis.Of(rule));
        json.WriteEndObject();
    }
}
