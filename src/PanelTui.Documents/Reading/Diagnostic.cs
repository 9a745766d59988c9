using PanelTui.Documents.Text;

namespace PanelTui.Documents.Reading;

/// <summary>
/// Something about the text, not about the panel: where it stands, what was found and what was expected.
/// </summary>
/// <param name="Severity">An error means that there is no schedule.</param>
/// <param name="Code">One of <see cref="DiagnosticCodes"/>.</param>
/// <param name="Span">What the sentence is about.</param>
/// <param name="Message">One sentence, without the place and without a full stop.</param>
public sealed record Diagnostic(
    DiagnosticSeverity Severity, string Code, TextSpan Span, string Message)
{
    public bool IsError => Severity == DiagnosticSeverity.Error;
}
