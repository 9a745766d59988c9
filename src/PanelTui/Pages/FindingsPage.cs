using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Editing;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>Every finding in full, worst first, then those that the schedule accepts with their reasons. Enter goes to the place.</summary>
internal sealed class FindingsPage : Page
{
    private const int Indent = 4;

    private int _columns = 80;

    public override ImmutableArray<EditorCommand> Commands =>
    [
        new PageCommand("a", "Let the chosen finding stand, for a reason", (editor, _) => editor.Open(new AcceptForm(Chosen(editor)!)), Key.A)
        {
            Needs = (editor, _) => Chosen(editor) is null ? "Only an open finding can be accepted" : null,
            Word = "accept",
            Edits = true,
        },
    ];

    public override string Title(Session session) => $"Findings: {FindingCount.Of(session.Now)}";

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var assessment = session.Assessment;
        _columns = columns;
        return
        [
            .. assessment.Findings.IsEmpty ? [new PageRow("No rule has found anything to check. That is no approval.")] : Array.Empty<PageRow>(),
            .. assessment.Findings.SelectMany(finding => Of(finding, $"{finding.Mend}", columns)),
            .. session.Now.Diagnostics.IsEmpty ? [] : new[] { PageRow.Gap, new PageRow("Noted in the file itself", Tone.Strong) },
            .. session.Now.Diagnostics.SelectMany(noted => Wrapped.Of(DisplayText.Clean(FindingRows.OfFile(session.Now, noted)), columns).Select(line => new PageRow(line))),
            .. Unstated.Of(session.Schedule) is { Length: > 0 } unstated
                ? Wrapped.Of($"Not stated, so not checked: {string.Join(", ", unstated)}.", columns).Select(line => new PageRow(line, Tone.Faint)).Prepend(PageRow.Gap)
                : [],
            .. assessment.Accepted.IsEmpty ? [] : new[] { PageRow.Gap, new PageRow("Accepted by the schedule", Tone.Strong) },
            .. assessment.Accepted.SelectMany(accepted => Of(accepted.Finding, $"Accepted because: {accepted.Because}", columns)),
        ];
    }

    /// <summary>The open finding on which the chosen row stands.</summary>
    private Finding? Chosen(IEditor editor)
    {
        var (chosen, open) = (ChosenAmong(Rows(editor.Session, _columns)), editor.Session.Assessment.Findings);
        return chosen >= 0 && chosen < open.Length ? open[chosen] : null;
    }

    private static IEnumerable<PageRow> Of(Finding finding, string then, int columns)
    {
        var where = finding.Spaces.IsEmpty ? "" : $" {string.Join(",", finding.Spaces)}:";
        var tone = SeverityTone.Of(finding.Severity);
        var lines = Wrapped.Of(DisplayText.Clean($"{finding.Severity.Mark}{where} {finding.Message}"), columns).ToList();
        var more = Wrapped.Of(DisplayText.Clean($"{then} ({finding.Cite}; {finding.Rule})"), columns - Indent);
        return
        [
            new PageRow(lines[0], tone, editor => GoTo(editor, finding.Spaces)),
            .. lines.Skip(1).Select(line => new PageRow(line, tone)),
            .. more.Select(line => new PageRow(new string(' ', Indent) + line, Tone.Faint)),
        ];
    }

    private static void GoTo(IEditor editor, ImmutableArray<SpaceNumber> spaces)
    {
        if (spaces.IsEmpty)
        {
            editor.Session.Say("This finding is about the whole panel, not one space");
            return;
        }

        editor.CloseAllPages();
        editor.Session.MoveCursor(spaces[0]);
    }
}
