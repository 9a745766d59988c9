using System.Collections.Immutable;

namespace PanelTui.Engine.Rules;

/// <summary>The rules there are.</summary>
public static class RuleBook
{
    public static readonly ImmutableArray<CodeRule> All =
    [
    ];

    /// <summary>Every finding: errors first, then by space; those about no space lead.</summary>
    public static ImmutableArray<Finding> Check(RuleContext context) =>
    [
        .. All.SelectMany(rule => rule.Check(context))
            .OrderByDescending(finding => finding.Severity)
            .ThenBy(finding => finding.Spaces.Length == 0 ? default : finding.Spaces[0]),
    ];
}
