using System.Text.Json;
using PanelTui.Engine.Derivations;

namespace PanelTui.Presentation;

/// <summary>How a figure came about as a JSON object: its name, a title, and its steps with values of twelve digits.</summary>
internal static class DerivationJson
{
    /// <summary>One figure as an output of its own, as `calc --why FIGURE --json` prints it.</summary>
    public static string Of(Derivation derivation) => JsonOutput.Why.Of(json => WriteFields(json, derivation));

    public static void Write(Utf8JsonWriter json, Derivation derivation)
    {
        json.WriteStartObject();
        WriteFields(json, derivation);
        json.WriteEndObject();
    }

    private static void WriteFields(Utf8JsonWriter json, Derivation derivation)
    {
        json.WriteString("figure", derivation.Figure);
        json.WriteString("title", derivation.Title);
        json.WriteStartArray("steps");
        foreach (var step in derivation.Steps) Write(json, step);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, DerivationStep step)
    {
        json.WriteStartObject();
        json.WriteString("label", step.Label);
        json.WriteFigure("value", step.IsRemark ? null : step.Value);
        json.WriteString("unit", step.Unit);
        json.WriteString("cite", $"{step.Cite}");
        json.WriteStartArray("spaces");
        foreach (var space in step.Spaces) json.WriteStringValue($"{space}");
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
