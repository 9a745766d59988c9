using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Editing;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>Asks before a file that was deleted on disk is written anew.</summary>
internal sealed class DeletedPage : QuestionPage
{
    public override string Title(Session session) => $"Not saved: {Path.GetFileName(session.Path)} has been deleted on disk";

    protected override ImmutableArray<Answer> Answers { get; } =
    [
        new Answer(Key.Y, "y", "write it anew", "Write it anew in the same place", editor => Saving.Try(editor, session => session.SaveAnew())),
        new Answer(Key.W, "w", "save elsewhere", "Save it under another name", editor => editor.Open(new ElsewhereForm(editor.Session.Path))),
        new Answer(Key.B, "b", "back", "Back to the editor; nothing is written", editor => editor.Session.Say("Not saved")),
    ];

    protected override IEnumerable<TextRun> Facts(Session session) =>
        [new TextRun("Another program has removed or renamed it since it was read. Your version is whole in the editor.")];
}
