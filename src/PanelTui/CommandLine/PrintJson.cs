using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>What `print` wrote, as JSON.</summary>
internal static class PrintJson
{
    /// <param name="written">False in a dry run: the files would have been written.</param>
    /// <param name="open">The sentence on the sheets of a schedule with findings at error level; null without any.</param>
    public static string Of(IEnumerable<PrintedFile> files, bool written, string? open) => JsonOutput.Print.Of(json =>
    {
        json.WriteBoolean("written", written);
        json.WriteString("not_settled", open);
        json.WriteStartArray("files");
        foreach (var file in files)
        {
            json.WriteStartObject();
            json.WriteString("sheet", file.Kind.Name);
            json.WriteString("format", file.Format.Name);
            json.WriteString("file", file.Path);
            json.WriteNumber("bytes", file.Bytes.Length);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
