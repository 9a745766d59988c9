using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>The reference page of the rules, docs/rules.md: an entry a rule, written from the rules themselves.</summary>
internal static class RulesPage
{
    private const string Head = """
        # The rules

        What `paneltui check` looks at, a section a rule; `paneltui rules` lists them, `paneltui rules NAME` prints one. This page is written from the
        rules themselves: `PANELTUI_ACCEPT=1 dotnet test` writes it anew.

        - An **error** breaks a rule of the code, or cannot be as it is written; `check` then exits with 1. A **warning** wants a look. A **note** says what
          no key of the schedule tells.
        - A finding names the spaces, the figures, the section of the edition that `code.edition` names, how well that stands, and what to check or change.
          None of it replaces the code in force, the authority having jurisdiction or licensed practice, and no finding does not mean that nothing is wrong.
        - A finding that you have looked at and let stand goes under `accepted` with your reason ([format.md](format.md)); it is then listed apart.
        """;

    public static string Text => string.Join('\n', Lines()) + "\n";

    private static IEnumerable<string> Lines() =>
    [
        Head.ReplaceLineEndings("\n"),
        "",
        "| rule | severity | what it asks |",
        "| --- | --- | --- |",
        .. RuleBook.All.Select(rule => $"| [{rule.Name}](#{rule.Name}) | {rule.Severity.Word} | {rule.Summary} |"),
        .. RuleBook.All.SelectMany(Entry),
        "",
        "## What is no rule, and why",
        "",
        .. NoRules.All.Select(one => $"- **{one.What}.** {one.Reason}"),
    ];

    private static IEnumerable<string> Entry(CodeRule rule) =>
    [
        "",
        $"## {rule.Name}",
        "",
        $"*{rule.Severity.Word}* · {rule.Summary}",
        "",
        $"- **Why:** {rule.Why}",
        $"- **What to do:** {rule.Advice}",
        .. RuleBasis.Of(rule).Select(basis => $"- **Rests on:** {basis}"),
    ];
}
