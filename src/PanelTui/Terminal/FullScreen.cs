using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using Terminal.Gui.App;
using Terminal.Gui.Time;
using Terminal.Gui.Views;

namespace PanelTui.Terminal;

/// <summary>The application on the real terminal: its parts put together, its window run, its end watched over.</summary>
[UnsupportedOSPlatform("windows")]
internal sealed class FullScreen : IDisposable
{
    private readonly TerminalOptions _options;
    private readonly Doorbell _bell = new();
    private readonly TtyWriter _writer;
    private readonly TtySize _size = new(TtySize.Measure, TimeProvider.System);
    private readonly TerminalSession _session;
    private readonly EndingWatch _ending;
    private readonly DiffOutput _output;
    private readonly PosixSignalRegistration _onResize;

    public FullScreen(TerminalOptions options, Action<Ending>? onEnding)
    {
        ThreadPool.SetMinThreads(4, 4); // the keyboard's reader holds one, and a signal must not wait for another
        _options = options;
        _writer = new TtyWriter(() => _ending?.HangUp());
        _session = new TerminalSession(_writer);
        _ending = new EndingWatch(_session, onEnding);
        var ascii = options.Ascii || Surroundings.IsAscii(Environment.GetEnvironmentVariable);
        var depth = options.NoColour ? ColourDepth.None : Surroundings.Colours(Environment.GetEnvironmentVariable);
        _output = new DiffOutput(_writer.Write, new CellGlyphs(ascii), new SgrTable(depth), TtySize.Measure);
        _onResize = PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => _bell.Ring());
    }

    /// <returns>The exit code of the program.</returns>
    public int Run(Func<IApplication, Runnable> build)
    {
        try
        {
            _session.EnterRaw();
            _output.Send(Entrance);
            RunApplication(build);
            return _ending.End(new Ending(EndingCause.Quit));
        }
#pragma warning disable CA1031 // The last catch of the program: the native build runs no finally for what is not caught.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return _ending.End(new Ending(EndingCause.Crash, fault: fault));
        }
    }

    public void Dispose()
    {
        _onResize.Dispose();
        _ending.Dispose();
        _session.Dispose();
        _output.Dispose();
        _bell.Dispose();
    }

    private string Entrance => TerminalModes.EnterWith(_options.Mouse);

    private void RunApplication(Func<IApplication, Runnable> build)
    {
        var filter = new InputFilter(Surroundings.EscapePatience(Environment.GetEnvironmentVariable));
        using var input = new TtyInput(filter, _bell.Ring, () => _ending.HangUp());
        using var app = Internals.NewApplication(new TerminalParts(input, _output, _size), new SystemTimeProvider());
        app.Init();
        app.TimedEvents!.Added += (_, _) => _bell.Ring();
        using var suspension = new Suspension(_session, ComeBack, app.Invoke);
        _output.OnSuspend = suspension.Stop;
        _ = new TurnLoop(app, _output.Flush, _bell.Wait, () => _size.IsPending);
        using var window = ApplicationStart.Open(app, _output, build);
        app.Run(window);
    }

    private void ComeBack()
    {
        _session.EnterRaw();
        _writer.Reopen();
        _output.ComeBack(Entrance);
    }
}
