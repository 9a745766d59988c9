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
    private readonly EditLock? _lock;
    private readonly ImmutableArray<Page> _questions;
    private volatile IApplication? _running;

    /// <param name="session">The schedule.</param>
    /// <param name="state">Where locks and unsaved work are.</param>
    /// <param name="clock">Wakes the keeping, tells when work was kept, and in which zone that is shown.</param>
    public Desk(Session session, StateFolder state, TimeProvider clock)
    {
        _session = session;
        _place = new LastPlace(state);
        session.BeginAt(_place.Of(session.Path));
        _keeping = new Keeping(session, state, clock, OnScreen);
        try
        {
            _lock = EditLock.Take(state, session.Path);
            _questions = Questions(state, clock);
            ScheduleFile.Sweep(session.Path, clock);
        }
        catch (FileProblem problem)
        {
            _questions = [];
            session.Say(problem.Message);
        }
    }

    public EditorScreen Open(IApplication app)
    {
        _running = app;
        var path = _session.Path;
        _ = Task.Run(() =>
        {
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
        _lock?.Dispose();
    }

    public void Dispose()
    {
        _keeping.Dispose();
        _lock?.Dispose();
    }

    private ImmutableArray<Page> Questions(StateFolder state, TimeProvider clock)
    {
        if (_lock!.Other is not { } other)
        {
            var found = UnsavedWork.Of(state, _session.Path, _session.OnDisk);
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
