namespace PanelTui.Documents.Text;

/// <summary>Line breaks of one kind.</summary>
internal static class LineBreaks
{
    /// <summary>The text with every break as LF.</summary>
    public static string AsLf(string text) =>
        text.Contains('\r', StringComparison.Ordinal)
            ? text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n')
            : text;
}
