namespace PanelTui.Documents.Reading;

public enum DiagnosticSeverity
{
    /// <summary>The file can be read; this is worth a look.</summary>
    Note,

    /// <summary>The file cannot be read as a schedule.</summary>
    Error,
}
