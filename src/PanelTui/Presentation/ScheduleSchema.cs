using System.Globalization;
using System.Text.Json;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine;

namespace PanelTui.Presentation;

/// <summary>The format as a JSON Schema, draft 7, made from the same book of keys that the reader goes by.</summary>
internal static class ScheduleSchema
{
    private const string Impossible = "no such word";

    public static string Text { get; } = JsonText.Of(Write);

    private static void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
        json.WriteString("title", "The schedule of one standby-fed panel");
        WriteMapping(json, "");
        json.WriteEndObject();
    }

    private static void WriteMapping(Utf8JsonWriter json, string owner)
    {
        var fields = FieldBook.Of(owner);
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", true);
        json.WriteStartObject("properties");
        foreach (var field in fields) WriteField(json, field);
        json.WriteEndObject();
        if (!fields.Any(field => field.IsRequired)) return;
        json.WriteStartArray("required");
        foreach (var field in fields.Where(field => field.IsRequired)) json.WriteStringValue(field.Key);
        json.WriteEndArray();
    }

    private static void WriteField(Utf8JsonWriter json, Field field)
    {
        json.WriteStartObject(field.Key);
        var end = field.Default is { } standing ? $" Default: {standing}." : "";
        json.WriteString("description", $"{field.Help}. {Upper(field.Expected)}.{end}");
        switch (field.Shape)
        {
            case FieldShape.Mapping:
                WriteMapping(json, field.Path);
                break;
            case FieldShape.ListOfMappings:
                json.WriteString("type", "array");
                json.WriteStartObject("items");
                WriteMapping(json, $"{field.Path}[]");
                json.WriteEndObject();
                break;
            case FieldShape.List:
                WriteList(json, field);
                break;
            case FieldShape.Value:
                WriteValue(json, field);
                break;
            default:
                throw Unnamed.Of(field.Shape);
        }

        json.WriteEndObject();
    }

    private static void WriteList(Utf8JsonWriter json, Field field)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        WriteValue(json, field);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteStartObject();
        WriteValue(json, field);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    // Words are offered; they are the only ones where the reader takes no others.
    private static void WriteValue(Utf8JsonWriter json, Field field)
    {
        if (!field.Allowed.IsEmpty && field.WhyNot(Impossible) is not null)
        {
            json.WriteStartArray("enum");
            foreach (var word in field.Allowed) WriteWord(json, word);
            json.WriteEndArray();
            return;
        }

        json.WriteStartArray("type");
        foreach (var type in TypesOf(field)) json.WriteStringValue(type);
        json.WriteEndArray();
        if (IsMeasured(field)) json.WriteString("pattern", "[0-9]");
        json.WriteStartArray("examples");
        foreach (var word in field.Allowed.IsEmpty ? [field.Example] : field.Allowed) WriteExample(json, word);
        json.WriteEndArray();
    }

    /// <summary>What the reader takes for no word at all has a number in it.</summary>
    private static bool IsMeasured(Field field) =>
        field.WhyNot(Impossible) is not null && field.WhyNot("yes") is not null && field.WhyNot("lugs") is not null
        && field.Allowed.Append(field.Example).All(word => word.Any(char.IsAsciiDigit));

    private static string[] TypesOf(Field field)
    {
        if (field.WhyNot("yes") is null && field.WhyNot(Impossible) is not null) return ["boolean", "string"];
        return field.WhyNot("1") is null ? ["string", "number"] : ["string"];
    }

    // A text editor's YAML reads 2023 as a number and true as a boolean.
    private static void WriteWord(Utf8JsonWriter json, string word)
    {
        json.WriteStringValue(word);
        if (word is "yes" or "true") json.WriteBooleanValue(true);
        if (word is "no" or "false") json.WriteBooleanValue(false);
        if (Number(word) is { } number) json.WriteNumberValue(number);
    }

    private static void WriteExample(Utf8JsonWriter json, string word)
    {
        if (Number(word) is { } number) json.WriteNumberValue(number);
        else json.WriteStringValue(word);
    }

    private static decimal? Number(string word) =>
        decimal.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string Upper(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}";
}
