using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Reading;

/// <summary>Collects what the readers find wrong, each thing once.</summary>
internal sealed class DiagnosticList
{
    /// <summary>More than a person works through before reading the file anew.</summary>
    public const int Most = 100;

    private readonly Dictionary<(int Start, string Message), (Diagnostic Found, Func<string>? Hint)> _found = [];

    public bool HasErrors { get; private set; }

    public void Error(string code, TextSpan span, string message)
    {
        HasErrors = true;
        Add(new(DiagnosticSeverity.Error, code, span, message));
    }

    /// <param name="code">What kind of note.</param>
    /// <param name="span">Where.</param>
    /// <param name="message">The sentence.</param>
    /// <param name="hint">What the sentence ends in; asked for only where the note is among those shown, since it takes a search.</param>
    public void Note(string code, TextSpan span, string message, Func<string>? hint = null) =>
        Add(new(DiagnosticSeverity.Note, code, span, message), hint);

    /// <summary>In the order of the file; where there are too many, errors before notes.</summary>
    public ImmutableArray<Diagnostic> InOrder() =>
        _found.Count <= Most ? Sorted(_found.Values) : [.. Sorted(Weightiest()), LeftOut()];

    private static Diagnostic Whole((Diagnostic Found, Func<string>? Hint) one) =>
        one.Hint is null ? one.Found : one.Found with { Message = one.Found.Message + one.Hint() };

    /// <summary>A value that an alias repeats is found wrong at every use, and told once.</summary>
    private void Add(Diagnostic diagnostic, Func<string>? hint = null) =>
        _found.TryAdd((diagnostic.Span.Start, diagnostic.Message), (diagnostic, hint));

    private IEnumerable<(Diagnostic Found, Func<string>? Hint)> Weightiest() =>
        _found.Values.OrderByDescending(one => one.Found.Severity).ThenBy(one => one.Found.Span.Start).Take(Most - 1);

    private static ImmutableArray<Diagnostic> Sorted(IEnumerable<(Diagnostic Found, Func<string>? Hint)> found) =>
        [.. found.OrderBy(one => one.Found.Span.Start).ThenByDescending(one => one.Found.Severity).Select(Whole)];

    private Diagnostic LeftOut()
    {
        var last = _found.Values.MaxBy(one => one.Found.Span.Start).Found;
        var more = string.Create(CultureInfo.InvariantCulture, $"{_found.Count - Most + 1} more are not shown");
        return new(DiagnosticSeverity.Note, DiagnosticCodes.More, last.Span, more);
    }
}
