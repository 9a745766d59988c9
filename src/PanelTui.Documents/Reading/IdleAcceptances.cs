using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Reading;

/// <summary>
/// Notes acceptances that fit no finding: the fault is mended, the breaker has moved, or the space is mistyped.
/// </summary>
internal static class IdleAcceptances
{
    /// <summary>The diagnostics with the notes among them, in the order of the file, and no more than there may be.</summary>
    public static ImmutableArray<Diagnostic> NotedIn(
        ImmutableArray<Diagnostic> diagnostics, Assessment assessment, SourceMap places)
    {
        var idle = assessment.Judgement.Idle.Where(one => RuleBook.Find(one.Rule) is not null);
        var notes = idle.Take(Math.Max(0, DiagnosticList.Most - diagnostics.Length)).Select(one => Note(one, places));
        return [.. diagnostics.Concat(notes).OrderBy(one => one.Span.Start)];
    }

    private static Diagnostic Note(Acceptance idle, SourceMap places) => new(
        DiagnosticSeverity.Note,
        DiagnosticCodes.IdleAcceptance,
        places.SpanOf(YamlPath.Of(TopFields.Accepted.Key, idle.Ordinal).Then(AcceptedFields.Rule.Key)),
        $"accepted names {idle.Rule}{(idle.Space is { } space ? $" at space {space}" : "")}, but there is no such finding; "
        + "take the entry away, or check its rule and space");
}
