using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Commands;
using PanelTui.Documents;
using PanelTui.Documents.Files;
using PanelTui.Documents.Merging;
using PanelTui.Documents.Recovery;
using PanelTui.Editing;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>Offers work that an earlier run could not save: when it was, what it would change, and whether to take it up.</summary>
/// <param name="session">The schedule that it was found for.</param>
/// <param name="work">What was found.</param>
/// <param name="keeping">Keeps what is taken up, before the earlier run's journal goes.</param>
/// <param name="zone">In which the time is told.</param>
internal sealed class UnsavedWorkPage(Session session, UnsavedWork work, Keeping keeping, TimeZoneInfo zone) : QuestionPage
{
    private readonly Snapshot _wanted = Snapshot.Of(work.Text);

    public override string Title(Session session) => string.Create(
        CultureInfo.InvariantCulture,
        $"Unsaved work of {TimeZoneInfo.ConvertTime(work.At, zone):yyyy-MM-dd HH:mm} was found: {work.Changes} {(work.Changes == 1 ? "change" : "changes")}");

    protected override ImmutableArray<Answer> Answers =>
    [
        .. IsOnAnotherVersion
            ? [new Answer(Key.M, "m", "merge", "Merge: the work and what the file has become; what was changed on both sides is settled one by one", Merge)]
            : Array.Empty<Answer>(),
        .. _wanted.Schedule is null ? Array.Empty<Answer>()
            : [new Answer(Key.T, "t", "take it up", "Take it up: it is in the editor then, unsaved; u takes it out again", TakeUp)],
        new Answer(Key.K, "k", "keep the file's", "Keep what the file has; the unsaved work is put aside as a file of its own", PutAside),
        new Answer(
            Key.L, "l", "later", "Decide later: it is offered again at the next start",
            editor => editor.Session.Say("The unsaved work is still there; it is offered again at the next start")),
    ];

    protected override IEnumerable<TextRun> Facts(Session _)
    {
        if (_wanted.Schedule is null) yield return new TextRun("It cannot be read as a schedule, so it cannot be taken up here.", Tone.Warning);
        if (IsOnAnotherVersion) yield return new TextRun(OnAnotherVersion, Tone.Warning);
        yield return new TextRun("What it would change", Tone.Strong);
        foreach (var line in WouldChange.Lines(session.Now, _wanted)) yield return new TextRun($"  {line}");
    }

    private const string OnAnotherVersion =
        "The file has been changed since this work began. Taking it up alone would also undo those changes; m merges both.";

    private bool IsOnAnotherVersion => _wanted.Schedule is not null && work.Began.Text != session.OnDisk.Text;

    private void Merge(IEditor editor)
    {
        var merge = ScheduleMerge.Of(work.Began, work.Text, session.OnDisk);
        if (merge.WhyNot is { } why) session.Say($"Not merged: {why}");
        else if (!merge.IsClean) editor.Open(new SettlePage(merge, null, Taken));
        else if (session.TakeMerge(null, merge.Settled()) is { } refusal) session.Say($"Not merged: {refusal}");
        else Taken();
    }

    /// <summary>The earlier run's journal goes once the work is kept in ours.</summary>
    private void Taken()
    {
        if (keeping.Now() is null) work.Forget();
    }

    private void TakeUp(IEditor editor)
    {
        editor.Session.Replace("take up unsaved work", work.Text.Text);
        Taken();
        editor.Session.Say("The unsaved work is in the editor: look it over, then save");
    }

    private void PutAside(IEditor editor)
    {
        try
        {
            editor.Session.Say($"The unsaved work is in {work.PutAside(editor.Session.Path)}");
        }
        catch (FileProblem problem)
        {
            editor.Session.Say($"The unsaved work stays where it is: {problem.Message}");
        }
    }
}
