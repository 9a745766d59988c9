using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;
using PanelTui.Terminal;

namespace PanelTui.Editing;

/// <summary>
/// Keeps the session's unsaved work on the disk: a second after the first change that is not kept yet, on a thread of its own, so that no
/// key waits for a disk; and at once when something else than the user ends the program. Without changes nothing happens.
/// </summary>
internal sealed class Keeping : IDisposable
{
    /// <summary>With the time of a write on a slow disk well within the two seconds of typing that may be lost.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly Session _session;
    private readonly Journal _journal;
    private readonly Action<Action> _onScreen;
    private readonly ITimer _timer;
    private readonly Lock _gate = new();
    private volatile Work _latest;
    private int _isWaiting;
    private volatile bool _isOver;
    private bool _hasTold;
    private string? _seen;

    /// <param name="session">Whose work.</param>
    /// <param name="state">Where it is kept.</param>
    /// <param name="clock">Wakes the keeping, and tells when the work was kept.</param>
    /// <param name="onScreen">Does something on the thread of the screen.</param>
    public Keeping(Session session, StateFolder state, TimeProvider clock, Action<Action> onScreen)
    {
        (_session, _onScreen) = (session, onScreen);
        _journal = new Journal(state, clock);
        _latest = session.Work;
        _timer = clock.CreateTimer(_ => Write(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        session.Changed += Touch;
    }

    /// <summary>Keeps the work now; why it cannot be kept, or nothing.</summary>
    public string? Now()
    {
        lock (_gate)
        {
            try
            {
                var work = _latest;
                if (!_isOver) _journal.Keep(work.Schedule, work.OnDisk, work.Text, work.Changes);
                return null;
            }
            catch (FileProblem problem)
            {
                return problem.Message;
            }
        }
    }

    /// <summary>A user who quits has been asked, and nothing is kept; everything else keeps what was not saved and says so.</summary>
    public void End(Ending ending)
    {
        if (ending.Cause == EndingCause.Quit)
            Finish(_journal.Clear);
        else if (!_latest.IsSaved)
            ending.Note = Now() ?? $"The changes that were not saved are kept: 'paneltui {_latest.Schedule}' offers them.";
    }

    public void Dispose()
    {
        _session.Changed -= Touch;
        _timer.Dispose();
        Finish(_journal.Dispose);
    }

    /// <summary>Called after every key: looks whether there is something new to keep, and no more.</summary>
    private void Touch()
    {
        var work = _session.Work;
        if (work == _latest) return;
        _latest = work;
        if (Interlocked.Exchange(ref _isWaiting, 1) == 0) _timer.Change(Pause, Timeout.InfiniteTimeSpan);
    }

    private void Write()
    {
        Interlocked.Exchange(ref _isWaiting, 0);
        if (_isOver) return;
        var trouble = Now();
        LookAtTheFile(_latest);
        if (trouble is null || _hasTold) return;
        _hasTold = true;
        _onScreen(() => _session.Say(trouble));
    }

    /// <summary>Another program's change is told long before saving asks about it; once for each, and not while a save is under way.</summary>
    private void LookAtTheFile(Work work)
    {
        try
        {
            var found = ScheduleFile.Look(work.Schedule);
            if (found.SameContent(work.Disk) || found.Sha256 == _seen) return;
            _onScreen(() =>
            {
                if (found.SameContent(_session.Work.Disk)) return;
                _seen = found.Sha256;
                _session.Say($"{work.Schedule} has been {(found.Exists ? "changed" : "deleted")} by another program; saving will ask what to do");
            });
        }
        catch (FileProblem)
        {
            // What is wrong with the file is told at saving.
        }
    }

    /// <summary>Waits for a write under way; a timer that rings afterwards writes nothing more.</summary>
    private void Finish(Action last)
    {
        lock (_gate)
        {
            _isOver = true;
            last();
        }
    }
}
