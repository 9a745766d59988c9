using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents;
using PanelTui.Documents.Files;
using PanelTui.Documents.Merging;
using PanelTui.Editing;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>Asks what to do when the file on disk is not the one that was read: nothing is written before there is an answer.</summary>
/// <param name="theirs">What is on disk now.</param>
internal sealed class ChangedUnderneathPage(LoadedFile theirs) : QuestionPage
{
    private readonly Snapshot _theirs = Snapshot.Of(theirs.Source);

    public override string Title(Session session) => $"Not saved: {Path.GetFileName(session.Path)} has been changed by another program";

    protected override ImmutableArray<Answer> Answers =>
    [
        .. _theirs.Schedule is null ? Array.Empty<Answer>()
            : [new Answer(Key.M, "m", "merge", "Merge: both changes together; what was changed on both sides is settled one by one", Merge)],
        new Answer(
            Key.W, "w", "save elsewhere", "Save your version under another name; the file stays as that program left it",
            editor => editor.Open(new ElsewhereForm(editor.Session.Path))),
        .. _theirs.Schedule is null ? Array.Empty<Answer>()
            : [new Answer(Key.R, "r", "reload", "Reload what that program wrote; u brings your version back", editor => editor.Session.Reload(theirs))],
        new Answer(Key.B, "b", "back", "Back to the editor; nothing is written", editor => editor.Session.Say("Not saved")),
    ];

    private void Merge(IEditor editor)
    {
        var session = editor.Session;
        var merge = ScheduleMerge.Of(session.OnDisk, session.Now.Source, theirs.Source);
        if (merge.WhyNot is { } why) session.Say($"Not merged: {why}");
        else if (!merge.IsClean) editor.Open(new SettlePage(merge, theirs));
        else if (session.TakeMerge(theirs, merge.Settled()) is { } refusal) session.Say($"Not merged: {refusal}");
    }

    protected override IEnumerable<TextRun> Facts(Session session)
    {
        if (_theirs.Schedule is null) yield return new TextRun("What is there now cannot be read as a schedule: look at it with 'paneltui check'.", Tone.Warning);
        yield return new TextRun("What that program changed", Tone.Strong);
        foreach (var line in WouldChange.Lines(Snapshot.Of(session.OnDisk), _theirs)) yield return new TextRun($"  {line}");
        yield return new TextRun("What you have changed", Tone.Strong);
        foreach (var line in WouldChange.Lines(Snapshot.Of(session.OnDisk), session.Now)) yield return new TextRun($"  {line}");
    }
}
