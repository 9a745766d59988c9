using System.Text;
using System.Text.Json;
using PanelTui.Documents.Files;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Recovery;

/// <summary>
/// The lines of a journal, JSON each: first whose it is and the text on disk that the work began with, then one line for
/// each writing, with what has changed since the line before.
/// </summary>
internal static class JournalLines
{
    private const string Version = "1";

    public static byte[] Head(string path, SourceText onDisk, Owner owner) => Line(json =>
    {
        json.WriteString("paneltui-journal", Version);
        json.WriteString("path", path);
        json.WriteBoolean("bom", onDisk.HasBom);
        json.WriteString("text", onDisk.Text);
        OwnerJson.Write(json, owner);
    });

    public static byte[] Entry(string before, string after, int changes, DateTimeOffset at) => Line(json =>
    {
        json.WriteString("at", at);
        json.WriteNumber("changes", changes);
        json.WriteStartArray("edits");
        foreach (var edit in TextChange.Between("", before, after).Edits)
        {
            json.WriteNumberValue(edit.Span.Start);
            json.WriteNumberValue(edit.Span.Length);
            json.WriteStringValue(edit.NewText);
        }

        json.WriteEndArray();
        json.WriteString("sum", Sum(after));
    });

    /// <exception cref="JsonException">No head of a journal.</exception>
    public static (Owner Owner, SourceText OnDisk) ReadHead(string line)
    {
        using var json = JsonDocument.Parse(line);
        var root = json.RootElement;
        if (root.GetProperty("paneltui-journal").GetString() != Version) throw new JsonException("a journal of another version");
        return (OwnerJson.Read(root), SourceText.FromString(root.GetProperty("text").GetString()!, root.GetProperty("bom").GetBoolean()));
    }

    /// <exception cref="JsonException">A line cut short, or one that does not fit the text before it.</exception>
    public static (string Text, int Changes, DateTimeOffset At) ReadEntry(string line, string before)
    {
        using var json = JsonDocument.Parse(line);
        var root = json.RootElement;
        JsonElement[] parts = [.. root.GetProperty("edits").EnumerateArray()];
        var edits = parts.Chunk(3).Select(part => new TextEdit(new(part[0].GetInt32(), part[1].GetInt32()), part[2].GetString()!));
        var after = edits.Aggregate(before, (text, edit) => edit.ApplyTo(text));
        return Sum(after) == root.GetProperty("sum").GetString()
            ? (after, root.GetProperty("changes").GetInt32(), root.GetProperty("at").GetDateTimeOffset())
            : throw new JsonException("a line that does not fit the text before it");
    }

    private static string Sum(string text) => Sha256.Hex(Encoding.UTF8.GetBytes(text))[..16];

    private static byte[] Line(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        bytes.WriteByte((byte)'\n');
        return bytes.ToArray();
    }
}
