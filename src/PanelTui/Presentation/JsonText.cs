using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace PanelTui.Presentation;

/// <summary>JSON as text, indented; what a file says is escaped, so that no control character reaches a terminal.</summary>
internal static class JsonText
{
    public static void WriteStrings(this Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values) json.WriteStringValue(value);
        json.WriteEndArray();
    }

    public static string Of(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true, Encoder = JavaScriptEncoder.Default }))
            write(json);
        return Encoding.UTF8.GetString(bytes.ToArray());
    }
}
