using System.Collections.Immutable;
using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;
using PanelTui.Editing;
using PanelTui.Pages;
using PanelTui.Terminal;
using Terminal.Gui.App;

namespace PanelTui.Screens;

/// <summary>An open schedule with what watches over it: the lock, the keeping of unsaved work, and what has to be asked first.</summary>
internal sealed class Desk : IDisposable
{
    private readonly Session _session;
    private readonly LastPlace _place;
    private readonly Keeping _keeping;
    private readonly StateFolder _state;
    private readonly Lock _gate = new();
    private EditLock? _lock;
    private OpenMark _mark;
    private string _locked;
    private readonly ImmutableArray<Page> _questions;
    private volatile IApplication? _running;

    /// <param name="session">The schedule.</param>
    /// <param name="state">Where locks and unsaved work are.</param>
    /// <param name="clock">Wakes the keeping, tells when work was kept, and in which zone that is shown.</param>
    public Desk(Session session, StateFolder state, TimeProvider clock)
    {
        (_session, _state, _locked) = (session, state, session.Path);
        _place = new LastPlace(state);
        session.BeginAt(_place.Of(session.Path));
        _keeping = new Keeping(session, state, clock, OnScreen);
        _mark = OpenMark.Take(session.Path);
        try
        {
            _lock = EditLock.Take(state, session.Path);
        }
        catch (FileProblem problem)
        {
            session.TellKept(problem.Message);
        }

        _questions = Questions(clock);
        ScheduleFile.Sweep(session.Path, clock);
        session.Settled += Follow;
        _keeping.FileReplaced += FollowMark;
    }

    public EditorScreen Open(IApplication app)
    {
        _running = app;
        var path = _session.Path;
        _ = Task.Run(() =>
        {
            _keeping.Watch();
            Rehearsal.Of(path);
            if (GitPlace.Of(path) is { } place) OnScreen(() => _session.Tell(place));
        });
        return new EditorScreen(_session, _questions);
    }

    /// <summary>Keeps what was not saved, unless the user has been asked, and gives the schedule free.</summary>
    public void End(Ending ending)
    {
        _running = null;
        _keeping.End(ending);
        _place.Keep(_session.Path, $"{_session.Cursor}");
        GiveFree();
    }

    public void Dispose()
    {
        _session.Settled -= Follow;
        _keeping.Dispose();
        GiveFree();
    }

    private void GiveFree()
    {
        _lock?.Dispose();
        lock (_gate) _mark.Dispose();
    }

    /// <summary>After a save the schedule is another file, perhaps of another name: it is this editor's now.</summary>
    private void Follow()
    {
        FollowMark();
        if (_session.Path == _locked) return;
        _locked = _session.Path;
        _keeping.Watch();
        _lock?.Dispose();
        try
        {
            _lock = EditLock.Take(_state, _locked);
        }
        catch (FileProblem problem)
        {
            _lock = null;
            _session.TellKept(problem.Message);
        }
    }

    private void FollowMark()
    {
        lock (_gate)
        {
            if (_mark.Other is not null || _running is null) return;
            _mark = _mark.On(_session.Path);
            if (_mark.Other is { } other)
                OnScreen(() => _session.Say(
                    $"{Path.GetFileName(_session.Path)} has been opened in another editor, too ({other})"));
        }
    }

    private ImmutableArray<Page> Questions(TimeProvider clock)
    {
        if ((_lock?.Other ?? _mark.Other) is not { } other)
        {
            var found = _lock is null ? [] : UnsavedWork.Of(_state, _session.Path, _session.OnDisk);
            return [.. Conflicts(), .. found.Reverse().Select(work => new UnsavedWorkPage(_session, work, _keeping, clock.LocalTimeZone))];
        }

        _session.WhyNoEdit = $"{Path.GetFileName(_session.Path)} is open in another editor ({other}), and here to look only";
        return [new OpenElsewherePage(other)];
    }

    /// <summary>What lines could not settle is often clear by what it says: then there is nothing to ask.</summary>
    private ImmutableArray<Page> Conflicts()
    {
        if (_session.ToSettle is not { } marked) return [];
        if (!marked.Merge.IsClean) return [new SettlePage(marked.Merge, marked.Read)];
        if (_session.TakeMerge(marked.Read, marked.Merge.Settled()) is { } refusal) _session.Say($"Not merged: {refusal}");
        return [];
    }

    private void OnScreen(Action action) => _running?.Invoke(action);
}
