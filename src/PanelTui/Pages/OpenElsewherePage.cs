using System.Collections.Immutable;
using PanelTui.Documents.Recovery;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>Says that another editor has the schedule open. Unless the user says otherwise, this one only looks.</summary>
/// <param name="other">Who has it open.</param>
internal sealed class OpenElsewherePage(Owner other) : QuestionPage
{
    public override string Title(Session session) => $"{Path.GetFileName(session.Path)} is already open in another editor";

    protected override ImmutableArray<Answer> Answers { get; } =
    [
        new Answer(Key.L, "l", "look only", "Look only; nothing can be changed here", editor => editor.Session.Say("Opened to look only")),
        new Answer(Key.E, "e", "edit anyway", "Edit anyway; what the other editor saves first is noticed at saving, and never overwritten", editor =>
        {
            editor.Session.WhyNoEdit = null;
            editor.Session.Say("Opened to edit, beside another editor");
        }),
    ];

    protected override IEnumerable<TextRun> Facts(Session session) =>
    [
        new TextRun($"It was opened by {other}."),
        new TextRun("Changes that are not saved there are not seen here."),
    ];
}
