using System.Text.Json;

namespace PanelTui.Documents.Recovery;

/// <summary>An owner as a member of a JSON object.</summary>
internal static class OwnerJson
{
    private const string Name = "owner";

    public static void Write(Utf8JsonWriter json, Owner owner)
    {
        json.WriteStartObject(Name);
        json.WriteNumber("process", owner.Process);
        json.WriteNumber("started", owner.Started);
        json.WriteString("boot", owner.Boot);
        json.WriteString("host", owner.Host);
        json.WriteString("user", owner.User);
        json.WriteEndObject();
    }

    public static Owner Read(JsonElement holder)
    {
        var owner = holder.GetProperty(Name);
        return new(
            owner.GetProperty("process").GetInt32(),
            owner.GetProperty("started").GetInt64(),
            owner.GetProperty("boot").GetString()!,
            owner.GetProperty("host").GetString()!,
            owner.GetProperty("user").GetString()!);
    }
}
