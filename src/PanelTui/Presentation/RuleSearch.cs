using System.Collections.Immutable;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>The rules that hold every one of some words in name, summary, reason, advice or section.</summary>
internal static class RuleSearch
{
    public static ImmutableArray<CodeRule> Of(IReadOnlyCollection<string> words) =>
        [.. RuleBook.All.Where(rule => words.All(word => TextOf(rule).Contains(word, StringComparison.OrdinalIgnoreCase)))];

    private static string TextOf(CodeRule rule) =>
        string.Join('\n', [rule.Name, rule.Name.Replace('-', ' '), rule.Summary, rule.Why, rule.Advice, .. RuleBasis.Of(rule)]);
}
