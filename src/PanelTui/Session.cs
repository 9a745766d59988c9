using PanelTui.Documents;
using PanelTui.Documents.Files;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Text;
using PanelTui.Editing;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui;

/// <summary>The open file: its text with history, what follows from it, where the cursor is and what is in the hand.</summary>
/// <remarks>The schedule can always be assessed: an edit that would leave it unreadable is refused.</remarks>
internal sealed class Session
{
    private const string Applying = "Applying the change ...";
    private const string WorkingOut = "Working out the figures ...";
    private readonly History _history;
    private DiskState _disk;
    private int _finding;
    private bool _hasUndone;

    private Session(string path, LoadedFile file, Snapshot snapshot, Pace pace)
    {
        Pace = pace;
        Path = path;
        OnDisk = file.Source;
        _disk = file.State;
        _history = new History(file.Source.Text);
        Now = snapshot;
        Face = Face.Of(snapshot.Schedule!);
        Cursor = new SpaceNumber(1);
        if (file.IsReadOnly) Message = $"{path} is read-only: changes are saved under another name, with w";
    }

    /// <summary>Something to show has changed: the text, the cursor, the hand, or what there is to say.</summary>
    public event Action? Changed;

    /// <summary>A save begins: the work is to be kept elsewhere until the file is whole on the disk.</summary>
    public event Action? Saving;

    /// <summary>The session goes by another file on the disk: it has been saved or reloaded.</summary>
    public event Action? Settled;

    /// <summary>How long work on this file takes.</summary>
    public Pace Pace { get; }

    public string Path { get; private set; }

    public Snapshot Now { get; private set; }

    /// <summary>What the text would be if the breaker were dropped, or the form sent off, now.</summary>
    public Snapshot? Preview { get; private set; }

    public SpaceNumber Cursor { get; private set; }

    public Hand? Hand { get; private set; }

    /// <summary>The breaker that was copied last.</summary>
    public CopiedBreaker? Copied { get; private set; }

    /// <summary>What the last key did, or why it did nothing.</summary>
    public string Message { get; private set; } = "";

    public Assessment Assessment => Now.Assessment!;
    public Schedule Schedule => Now.Schedule!;

    public bool IsSaved => _history.IsSaved;

    /// <summary>What the file held when it was read or saved last.</summary>
    public SourceText OnDisk { get; private set; }

    /// <summary>The conflicts that the file on disk still has; nothing where it has none, or they have been settled.</summary>
    public MarkedFile? ToSettle { get; private set; }

    /// <summary>Why unsaved work is not kept for a later run; null when it is.</summary>
    public string? WhyNotKept { get; private set; }

    /// <summary>
    /// What another program has made of the file since it was read or saved; null when it is as it was.
    /// </summary>
    public DiskState? Newer { get; private set; }

    /// <summary>Why nothing may be changed here; nothing where it may.</summary>
    public string? WhyNoEdit { get; set; }

    /// <summary>What is not saved, with the form that is being filled in; a breaker in the hand is still where it was.</summary>
    public Work Work
    {
        get
        {
            var draft = Hand is null ? Preview : null;
            return new Work(Path, OnDisk, _disk, (draft ?? Now).Source.Text, _history.StepsFromSaved + (draft is null ? 0 : 1));
        }
    }

    public string? UndoTitle => _history.UndoTitle;

    public string? RedoTitle => _history.RedoTitle;

    /// <summary>The face of the panel as it is now.</summary>
    public Face Face { get; private set; }

    /// <summary>The circuit under the cursor.</summary>
    public Circuit? Here => Face.At(Cursor)?.Circuit;

    /// <exception cref="FileProblem">The file cannot be had.</exception>
    /// <exception cref="Documents.Yaml.YamlProblem">The file is no text that a schedule could be.</exception>
    public static (Session? Session, Snapshot Snapshot) Open(string path, TimeProvider? clock = null)
    {
        var pace = new Pace(clock ?? TimeProvider.System);
        var file = ScheduleFile.Load(path);
        var snapshot = pace.Reading(() => Snapshot.Of(file.Source));
        if (snapshot.Assessment is not null) return (new Session(path, file, snapshot, pace), snapshot);
        return (MarkedFile.Of(path, file) is { } marked ? OfMarked(path, marked, pace) : null, snapshot);
    }

    /// <summary>Our version, to look at until its conflicts are settled; nothing where that cannot be read either.</summary>
    private static Session? OfMarked(string path, MarkedFile marked, Pace pace)
    {
        var ours = Snapshot.Of(marked.Read.Source);
        return ours.Assessment is null ? null : new Session(path, marked.Read, ours, pace) { ToSettle = marked, WhyNoEdit = MarkedFile.Unsettled };
    }

    public void MoveCursor(SpaceNumber to)
    {
        Cursor = to;
        Message = "";
        if (Hand is { } hand) Hold(hand.Circuit);
        else Changed?.Invoke();
    }

    /// <summary>Begins on a space, where there is one.</summary>
    public void BeginAt(string? space)
    {
        if (SpaceNumber.TryParse(space ?? "", out var at) && Face.LineOf(at) >= 0 && Face.Lines[Face.LineOf(at)].On(at.IsLeft)?.Space == at) Cursor = at;
    }

    /// <summary>What git has of this file; nothing where it is in no repository, or not yet known.</summary>
    public GitPlace? Git { get; private set; }
    public bool IsCommitted => Git?.IsCommitted(OnDisk.ToBytes()) ?? false;

    public void Tell(GitPlace? place)
    {
        Git = place;
        Changed?.Invoke();
    }

    /// <summary>Says once that work cannot be kept; null when it can be again.</summary>
    public void TellKept(string? whyNot)
    {
        var isNews = WhyNotKept is null && whyNot is not null;
        WhyNotKept = whyNot;
        if (isNews) Say(whyNot!);
        else Changed?.Invoke();
    }

    /// <summary>
    /// Takes note of what is on the disk, and says what can be done when another program has changed it.
    /// </summary>
    public void Notice(DiskState found)
    {
        var before = Newer;
        Newer = found.SameContent(_disk) ? null : found;
        if (Newer is { } newer && !(before?.SameContent(newer) ?? false))
            Say($"{Path} has been {(newer.Exists ? "changed" : "deleted")} by another program. {(newer.Exists
                ? "^S asks what to do: merge, reload or save elsewhere"
                : "^S asks what to do: write it again or save elsewhere")}");
        else if (before is not null && Newer is null)
            Say($"{Path} is on the disk again as it was");
    }

    public void Say(string message)
    {
        Message = message;
        Changed?.Invoke();
    }

    /// <summary>Makes an intent one step of undo. Where it is refused nothing happens, and the reason comes back.</summary>
    public string? Do(Func<Snapshot, Intended> intent)
    {
        return WhyNoEdit ?? Pace.Of(Applying, () => Done(intent));
    }

    private string? Done(Func<Snapshot, Intended> intent)
    {
        var wanted = intent(Now);
        if (!wanted.IsPossible) return wanted.Refusal;
        _history.Make(wanted.Change);
        Rebuild($"Done: {wanted.Change.Title}", wanted.After);
        return null;
    }

    /// <summary>Shows what an intent would do to the figures, without doing it; a refused one shows nothing.</summary>
    public void Try(Func<Snapshot, Intended> intent)
    {
        Pace.Of(WorkingOut, () => Preview = intent(Now).After);
        Changed?.Invoke();
    }

    public void EndPreview()
    {
        Preview = null;
        Changed?.Invoke();
    }

    /// <summary>Takes a breaker into the hand, or looks anew at where the hand is.</summary>
    public void Hold(Circuit circuit)
    {
        Hand = Hand.Of(this, circuit);
        if (Hand.Change is { } change) Try(change);
        else EndPreview();
    }

    public void Remember(Circuit circuit)
    {
        Copied = new CopiedBreaker(Now, circuit);
        Say($"Copied {CircuitText.NameOf(circuit)}: go to an open space and press p");
    }

    public void LetGo()
    {
        Hand = null;
        EndPreview();
    }

    /// <summary>Goes to the finding after the one that was shown last, worst first, and round again.</summary>
    public void NextFinding()
    {
        var findings = Assessment.Findings;
        var finding = findings[_finding++ % findings.Length];
        if (!finding.Spaces.IsEmpty) Cursor = finding.Spaces[0];
        Say($"{finding.Severity.Mark} {finding.Message} {finding.Mend} ({finding.Cite})");
    }

    public void Undo()
    {
        var title = _history.UndoTitle;
        if (title is not null) Pace.Of(Applying, () =>
        {
            _history.Undo();
            Rebuild(_hasUndone ? $"Undone: {title}" : $"Undone: {title}. Ctrl+Z and u undo; Z suspends to the shell");
            _hasUndone = true;
        });
    }

    public void Redo()
    {
        var title = _history.RedoTitle;
        if (title is not null) Pace.Of(Applying, () =>
        {
            _history.Redo();
            Rebuild($"Done again: {title}");
        });
    }

    /// <summary>Makes another text of the whole file one step of undo.</summary>
    public void Replace(string title, string text)
    {
        Pace.Of(Applying, () =>
        {
            _history.Make(TextChange.Between(title, Now.Source.Text, text));
            Rebuild($"Done: {title}");
        });
    }

    /// <summary>Takes what is on disk now; what was in the editor is one step of undo away.</summary>
    public void Reload(LoadedFile file)
    {
        (_disk, OnDisk) = (file.State, file.Source);
        Replace("reload the file", file.Source.Text);
        _history.MarkSaved();
        Settle();
        Say("Reloaded; u brings your version back");
    }

    /// <summary>Takes a text made of ours and of what is on disk now, as one step of undo; a refusal where it is no schedule.</summary>
    /// <param name="theirs">What is on disk; nothing where that is what was opened.</param>
    public string? TakeMerge(LoadedFile? theirs, SourceText merged)
    {
        if (Snapshot.Of(merged).Assessment is null) return "together they cannot be read as a schedule: settle it another way, or save elsewhere";
        if (theirs is { } read) (_disk, OnDisk) = (read.State, read.Source);
        Settle();
        Replace("merge with what another program wrote", merged.Text);
        if (ToSettle is null && Now.Source.Text == OnDisk.Text) _history.MarkSaved();
        else if (theirs is not null) _history.MarkNoneSaved();
        Say(ToSettle is null
            ? "Merged: look at it, then save; u brings your version back"
            : "Settled: look at it, then save; 'git add' then tells git so");
        if (WhyNoEdit == MarkedFile.Unsettled) WhyNoEdit = null;
        ToSettle = null;
        return null;
    }

    /// <summary>Writes the file; nothing on success, else the reason. The work stays in the editor either way.</summary>
    public FileProblem? Save(string? elsewhere = null) =>
        elsewhere is null ? Save(Path, _disk) : Save(elsewhere, DiskState.Missing);

    /// <summary>Writes the file where there is none any more.</summary>
    public FileProblem? SaveAnew() => Save(Path, DiskState.Missing);

    private FileProblem? Save(string target, DiskState expected)
    {
        Saving?.Invoke();
        try
        {
            var saved = ScheduleFile.Save(target, Now.Source, expected);
            _disk = saved.State;
            if (target != Path) WhyNoEdit = null;
            Path = target;
            OnDisk = Now.Source;
            _history.MarkSaved();
            Settle();
            Say(saved.Note ?? $"Saved {target}");
            return null;
        }
        catch (FileProblem problem)
        {
            return problem;
        }
    }

    private void Settle()
    {
        Newer = null;
        Settled?.Invoke();
    }

    /// <param name="message">What was done.</param>
    /// <param name="read">The text as it is now where it has been read already, to prove the change.</param>
    private void Rebuild(string message, Snapshot? read = null)
    {
        Now = read is not null && read.Source.Text == _history.Text ? read : Snapshot.Of(OnDisk.WithText(_history.Text));
        Face = Face.Of(Schedule);
        Hand = null;
        Preview = null;
        Message = message;
        Changed?.Invoke();
    }
}
