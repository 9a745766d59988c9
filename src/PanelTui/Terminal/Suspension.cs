using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace PanelTui.Terminal;

/// <summary>Stops the program for the shell's job control, with the terminal in order, and comes back whole.</summary>
[UnsupportedOSPlatform("windows")]
internal sealed class Suspension : IDisposable
{
    /// <summary>A group of processes that no shell watches over is not stopped; it goes on after this.</summary>
    private const int LongestWait = 100;

    private readonly TerminalSession _session;
    private readonly Action _comeBack;
    private readonly Action<Action> _onMainThread;
    private readonly ManualResetEventSlim _continued = new();
    private readonly PosixSignalRegistration _onContinue;
    private PosixSignalRegistration _onStop;
    private volatile bool _stopping;

    /// <param name="session">The terminal to give back.</param>
    /// <param name="comeBack">Takes the terminal again and paints everything.</param>
    /// <param name="onMainThread">Runs an action on the thread of the screen.</param>
    public Suspension(TerminalSession session, Action comeBack, Action<Action> onMainThread)
    {
        _session = session;
        _comeBack = comeBack;
        _onMainThread = onMainThread;
        _onStop = WatchForStop();
        _onContinue = PosixSignalRegistration.Create(PosixSignal.SIGCONT, context =>
        {
            context.Cancel = true; // the runtime would put the line back into the mode it found
            Continue();
        });
    }

    /// <summary>Stops the whole job, as a shell does on its own Ctrl+Z, and returns when it goes on.</summary>
    public void Stop()
    {
        _stopping = true;
        _continued.Reset();
        _session.GiveBack();
        _onStop.Dispose(); // the system's own answer to the signal: stop
        _ = Libc.Signal(0, OperatingSystem.IsMacOS() ? 18 : 20);
        _continued.Wait(LongestWait);
        _onStop = WatchForStop();
        _stopping = false;
        _comeBack();
    }

    public void Dispose()
    {
        _onStop.Dispose();
        _onContinue.Dispose();
        _continued.Dispose();
    }

    private PosixSignalRegistration WatchForStop() =>
        PosixSignalRegistration.Create(PosixSignal.SIGTSTP, context =>
        {
            context.Cancel = true;
            _onMainThread(Stop);
        });

    private void Continue()
    {
        if (_stopping)
            _continued.Set();
        else
            _onMainThread(_comeBack);
    }
}
