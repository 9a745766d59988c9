using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.ViewBase;

namespace PanelTui.Terminal;

/// <summary>Makes the library's loop wait instead of poll: for input, a timer, a posted action or a new size.</summary>
/// <remarks>
/// The library turns 25 times a second, and paints once a turn. Here a turn is taken when there is something to do:
/// a key is on the screen within a millisecond, and an idle program does nothing at all.
/// </remarks>
internal sealed class TurnLoop
{
    private const int LongestSleep = 60_000;
    private const int TurnsOfAStubbornView = 3;
    private const int PauseForAStubbornView = 50;
    private const int PauseForANewSize = 15;

    private readonly IApplication _app;
    private readonly InputProcessorImpl<char> _input;
    private readonly Action _flush;
    private readonly Action<int> _wait;
    private readonly Func<bool> _sizeIsPending;
    private int _turnsOwed = 2;
    private int _stubbornTurns;

    /// <param name="app">The application, already initialised.</param>
    /// <param name="flush">Sends the frame of the turn that has just ended.</param>
    /// <param name="wait">Waits for something to do, at most so many milliseconds.</param>
    /// <param name="sizeIsPending">Whether a new size is about to be reported.</param>
    public TurnLoop(IApplication app, Action flush, Action<int> wait, Func<bool> sizeIsPending)
    {
        _app = app;
        _flush = flush;
        _wait = wait;
        _sizeIsPending = sizeIsPending;
        _input = (InputProcessorImpl<char>)app.Driver!.GetInputProcessor();
        Application.MaximumIterationsPerSecond = ushort.MaxValue; // 1000 / 65535 is 0 ms: no sleep of the library's own
        app.Iteration += (_, _) => BeforeTurn();
    }

    private void BeforeTurn()
    {
        _flush();
        if (IsBusy())
            return;
        if (SleepAllowed() is > 0 and var sleep)
            _wait(sleep);
        _turnsOwed = 1;
        _stubbornTurns = 0;
    }

    /// <summary>A timer or a posted action of the last turn may have changed a view: draw it before waiting.</summary>
    private bool IsBusy()
    {
        if (!_input.InputQueue.IsEmpty)
            return true;
        if (_turnsOwed > 0)
            return _turnsOwed-- > 0;
        return _stubbornTurns < TurnsOfAStubbornView && IsAnythingDirty() && ++_stubbornTurns > 0;
    }

    private int SleepAllowed()
    {
        var sleep = _stubbornTurns > 0 ? PauseForAStubbornView : LongestSleep;
        if (_sizeIsPending())
            sleep = PauseForANewSize;
        return ((TimedEvents)_app.TimedEvents!).CheckTimers(out var untilTimer) ? Math.Min(sleep, untilTimer) : sleep;
    }

    private bool IsAnythingDirty() =>
        _app.SessionStack!.Any(session => IsDirty(session.Runnable as View))
        || IsDirty(_app.Popovers?.GetActivePopover() as View);

    private static bool IsDirty(View? view) =>
        view is { Visible: true }
        && (view.NeedsDraw || view.NeedsLayout || view.SubViews.Any(IsDirty)
            || IsDirty(view.Padding.View) || IsDirty(view.Border.View));
}
