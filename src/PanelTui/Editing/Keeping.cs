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
    private readonly Lock _watching = new();
    private readonly ITimer _timer;
    private readonly Lock _gate = new();
    private volatile Work _latest;
    private int _isWaiting;
    private volatile bool _isOver;
    private FileWatch? _watch;
    private string? _watched;
    private int _looks;

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
        session.Saving += KeepFirst;
    }

    /// <summary>The name of the schedule stands for another file than before; called on any thread.</summary>
    public event Action? FileReplaced;

    /// <summary>
    /// Has the system tell when another program changes the file, and looks at it once. Where the system has no watcher
    /// to give,
    /// the file is looked at after each change of the user's and at saving.
    /// </summary>
    public void Watch()
    {
        var path = _latest.Schedule;
        lock (_watching)
        {
            if (_isOver || path == _watched) return;
            _watch?.Dispose();
            (_watched, _watch) = (path, FileWatch.Of(path, Look));
        }

        Look();
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
        _session.Saving -= KeepFirst;
        lock (_watching)
        {
            _isOver = true;
            _watch?.Dispose();
        }

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
        if ((trouble is null) != (_session.WhyNotKept is null)) _onScreen(() => _session.TellKept(trouble));
    }

    /// <summary>
    /// A save that is killed loses nothing: what it writes is in the journal already. Without a journal it goes on
    /// alone.
    /// </summary>
    private void KeepFirst()
    {
        Touch();
        Now();
    }

    /// <summary>
    /// Looks at the file on another thread; what happens meanwhile makes it look once more, not many times.
    /// </summary>
    private void Look()
    {
        if (_isOver || Interlocked.Increment(ref _looks) != 1) return;
        _ = Task.Run(() =>
        {
            for (var seen = 0; seen != Interlocked.CompareExchange(ref _looks, 0, seen);)
            {
                seen = Volatile.Read(ref _looks);
                LookAtTheFile(_latest);
            }
        });
    }

    private void LookAtTheFile(Work work)
    {
        try
        {
            var found = ScheduleFile.Look(work.Schedule);
            if (found.Inode != work.Disk.Inode) FileReplaced?.Invoke();
            if (!found.SameContent(work.Disk) || _session.Newer is not null) _onScreen(() => Notice(found, work));
        }
        catch (FileProblem)
        {
            // What is wrong with the file is told at saving.
        }
    }

    /// <summary>What was seen before or during a save of this session's says nothing: it is looked at again.</summary>
    private void Notice(DiskState found, Work work)
    {
        if (_session.Work is var now && now.Schedule == work.Schedule && now.Disk == work.Disk) _session.Notice(found);
        else Look();
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
