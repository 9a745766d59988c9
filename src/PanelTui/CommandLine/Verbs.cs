using System.Collections.Immutable;

namespace PanelTui.CommandLine;

/// <summary>All verbs, in the order in which help lists them.</summary>
internal static class Verbs
{
    public static readonly ImmutableArray<Verb> All =
    [
        new NewVerb(),
        new CheckVerb(),
        new CalcVerb(),
        new RulesVerb(),
        new CompletionsVerb(),
        new InfoVerb(),
    ];
}
