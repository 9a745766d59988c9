using System.Runtime.InteropServices;

namespace PanelTui.Terminal;

/// <summary>Ends the program in order, whatever ends it: the work is kept first, the terminal given back, then the exit.</summary>
internal sealed class EndingWatch : IDisposable
{
    /// <summary>A dropped line sends two or three signals at once; only a later one means that the user is waiting.</summary>
    private static readonly TimeSpan OneEvent = TimeSpan.FromMilliseconds(500);

    /// <summary>SIGABRT, by its number everywhere: the runtime's own answer to one from outside is to hang.</summary>
    private const int Abort = 6;

    private const string NoMemoryToKeep = "There was not enough memory to keep the last changes.";

    private readonly Action<Ending>? _onEnding;
    private readonly TerminalSession _session;
    private readonly List<PosixSignalRegistration> _signals = []; // a collected registration unregisters itself
    private long _began;

    public EndingWatch(TerminalSession session, Action<Ending>? onEnding)
    {
        _session = session;
        _onEnding = onEnding;
        Watch(PosixSignal.SIGHUP, EndingCause.Hangup, 1);
        Watch(PosixSignal.SIGINT, EndingCause.Signal, 2);
        Watch(PosixSignal.SIGQUIT, EndingCause.Signal, 3);
        Watch(PosixSignal.SIGTERM, EndingCause.Signal, 15);
        Watch((PosixSignal)Abort, EndingCause.Signal, Abort);
        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
    }

    /// <summary>The terminal answers with an error or an end of file: its far end is gone.</summary>
    public void HangUp() => EndNow(new Ending(EndingCause.Hangup, 1));

    /// <summary>Ends on the main thread, which returns the exit code; a signal that came first has its way.</summary>
    public int End(Ending ending)
    {
        if (!IsFirst())
            Thread.Sleep(Timeout.Infinite); // another thread is ending the program
        Keep(ending);
        _session.GiveBackInTime();
        Say(ending);
        return ending.ExitCode;
    }

    public void Dispose()
    {
        AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
        foreach (var signal in _signals)
            signal.Dispose();
    }

    private void Watch(PosixSignal signal, EndingCause cause, int number) =>
        _signals.Add(PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = true;
            if (HasBegunLongAgo())
                Libc.ExitNow(128 + number);
            EndNow(new Ending(cause, number));
        }));

    private void OnUnhandled(object sender, UnhandledExceptionEventArgs args) =>
        EndNow(new Ending(EndingCause.Crash, fault: args.ExceptionObject as Exception));

    private void EndNow(Ending ending)
    {
        if (!IsFirst())
            return;
        Keep(ending);
        var givenBack = _session.GiveBackInTime();
        if (givenBack)
            Say(ending);
        if (!givenBack || ending.Cause == EndingCause.Crash)
            Libc.ExitNow(ending.ExitCode);
        Environment.Exit(ending.ExitCode);
    }

    /// <summary>Says it if there is memory for it; the terminal is in order by now.</summary>
    private static void Say(Ending ending)
    {
        try
        {
            Parting.Say(ending);
        }
        catch (OutOfMemoryException fault)
        {
            LastResort.Say(fault);
        }
    }

    private bool IsFirst() => Interlocked.CompareExchange(ref _began, Environment.TickCount64 | 1, 0) == 0;

    private bool HasBegunLongAgo() =>
        Interlocked.Read(ref _began) is > 0 and var began
        && Environment.TickCount64 - began > OneEvent.TotalMilliseconds;

    private void Keep(Ending ending)
    {
        try
        {
            _onEnding?.Invoke(ending);
        }
#pragma warning disable CA1031 // Whatever keeping the work throws, the terminal must still be given back.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            ending.Note = LastResort.IsShortOfMemory(fault) ? NoMemoryToKeep : $"Keeping unsaved work failed: {fault.Message}";
        }
    }
}
