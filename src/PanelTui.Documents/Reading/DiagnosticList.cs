using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Reading;

/// <summary>Collects what the readers find wrong, each thing once.</summary>
internal sealed class DiagnosticList
{
    /// <summary>More than a person works through before reading the file anew.</summary>
    public const int Most = 100;

    private readonly Dictionary<(int Start, string Message), Diagnostic> _found = [];

    public bool HasErrors { get; private set; }

    public void Error(string code, TextSpan span, string message)
    {
        HasErrors = true;
        Add(new(DiagnosticSeverity.Error, code, span, message));
    }

    public void Note(string code, TextSpan span, string message) =>
        Add(new(DiagnosticSeverity.Note, code, span, message));

    /// <summary>In the order of the file; where there are too many, errors before notes.</summary>
    public ImmutableArray<Diagnostic> InOrder() =>
        _found.Count <= Most ? Sorted(_found.Values) : [.. Sorted(Weightiest()), LeftOut()];

    /// <summary>A value that an alias repeats is found wrong at every use, and told once.</summary>
    private void Add(Diagnostic diagnostic) => _found.TryAdd((diagnostic.Span.Start, diagnostic.Message), diagnostic);

    private IEnumerable<Diagnostic> Weightiest() =>
        _found.Values.OrderByDescending(found => found.Severity).ThenBy(found => found.Span.Start).Take(Most - 1);

    private static ImmutableArray<Diagnostic> Sorted(IEnumerable<Diagnostic> found) =>
        [.. found.OrderBy(one => one.Span.Start).ThenByDescending(one => one.Severity)];

    private Diagnostic LeftOut()
    {
        var last = _found.Values.MaxBy(found => found.Span.Start)!;
        var more = string.Create(CultureInfo.InvariantCulture, $"{_found.Count - Most + 1} more are not shown");
        return new(DiagnosticSeverity.Note, DiagnosticCodes.More, last.Span, more);
    }
}
