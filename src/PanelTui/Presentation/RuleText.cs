using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>Rules as a terminal shows them, at most 80 columns wide.</summary>
internal static class RuleText
{
    private const int Columns = 78;

    /// <summary>Two lines or three a rule: its severity and name, and what it asks.</summary>
    public static IEnumerable<string> List(IEnumerable<CodeRule> rules) => rules.SelectMany(rule =>
        Indented(rule.Summary, 10).Prepend($"{rule.Severity.Word,-8}  {rule.Name}"));

    public static IEnumerable<string> Of(CodeRule rule) =>
    [
        $"{rule.Name}: {rule.Severity.Word}",
        .. Indented(rule.Summary, 2),
        "",
        "Why",
        .. Indented(rule.Why, 2),
        "What to do",
        .. Indented(rule.Advice, 2),
        "Rests on",
        .. RuleBasis.Of(rule).SelectMany(basis => Indented(basis, 2)),
    ];

    private static IEnumerable<string> Indented(string sentence, int columns) =>
        Wrapped.Of(sentence, Columns - columns).Select(line => new string(' ', columns) + line);
}
