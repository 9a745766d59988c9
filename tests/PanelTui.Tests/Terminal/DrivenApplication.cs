using System.Drawing;
using System.Runtime.ExceptionServices;
using PanelTui.Terminal;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Views;

namespace PanelTui.Tests.Terminal;

/// <summary>A program on a thread of its own that takes one step at a time and then rests.</summary>
internal sealed class DrivenApplication : IDisposable
{
    /// <summary>Only a program that hangs is ever waited for so long.</summary>
    private static readonly TimeSpan Hanging = TimeSpan.FromSeconds(60);

    private readonly Func<IApplication, Runnable> _build;
    private readonly InputFilter _filter = new(TimeSpan.FromMilliseconds(50));
    private readonly SteppedClock _clock = new();
    private readonly SemaphoreSlim _rested = new(0);
    private readonly SemaphoreSlim _go = new(0);
    private readonly SemaphoreSlim _posted = new(0);
    private readonly Thread _thread;
    private readonly DiffOutput _output;
    private readonly TtySize _measure;
    private WeakReference<IApplication>? _app; // disposed of where it runs
    private Action _step = () => { };
    private bool _isDisposing;
    private ExceptionDispatchInfo? _fault;

    public DrivenApplication(Func<IApplication, Runnable> build, Size size, bool ascii)
    {
        _build = build;
        Size = size;
        Terminal = new Vt(size);
        _measure = new TtySize(() => Size, _clock);
        _output = new DiffOutput(Terminal.Write, new CellGlyphs(ascii), new SgrTable(ColourDepth.Sixteen), () => Size);
        _thread = new Thread(Run) { IsBackground = true, Name = "driven program" };
        _thread.Start();
        AwaitRest();
    }

    public Vt Terminal { get; }

    public IApplication App => _app is { } app && app.TryGetTarget(out var target) ? target : throw new InvalidOperationException("The program has not started.");

    public bool HasEnded { get; private set; }

    public Size Size { get; set; }

    /// <summary>What was drawn last; it outlives the program.</summary>
    public IOutputBuffer Cells { get; private set; } = new OutputBufferImpl();

    public void Step(Action step)
    {
        if (HasEnded)
            throw new InvalidOperationException("The program has ended.");
        _step = step;
        _go.Release();
        AwaitRest();
    }

    /// <summary>What a terminal sends; call within a step.</summary>
    public void Receive(string sent) => Enqueue(_filter.Feed(sent));

    /// <summary>Lets time go by; call within a step.</summary>
    public void Pass(TimeSpan time)
    {
        if (_filter.Patience is { } patience && patience <= time)
            Enqueue(_filter.Expire());
        Terminal.Resize(Size);
        _clock.Advance(time);
    }

    public void AwaitPost() => _posted.Wait(Hanging).ShouldBeTrue("nothing came back from the background");

    public void Dispose()
    {
        _isDisposing = true;
        if (!HasEnded)
            _go.Release();
        _thread.Join(Hanging);
        _output.Dispose();
        _rested.Dispose();
        _go.Dispose();
        _posted.Dispose();
    }

    private void Enqueue(string keys)
    {
        var queue = ((InputProcessorImpl<char>)App.Driver!.GetInputProcessor()).InputQueue;
        foreach (var letter in keys)
            queue.Enqueue(letter);
    }

    private void AwaitRest()
    {
        if (!_rested.Wait(Hanging))
            throw new TimeoutException($"The program hangs. Its screen:\n{Terminal.Text}");
        _fault?.Throw();
    }

    private void Run()
    {
        try
        {
            using var silence = new SilentInput();
            using var app = Internals.NewApplication(new TerminalParts(silence, _output, _measure), _clock.Provider);
            app.Init();
            _app = new WeakReference<IApplication>(app);
            app.TimedEvents!.Added += (_, _) => _posted.Release();
            _output.Send(TerminalModes.EnterWith(mouse: true));
            _ = new TurnLoop(app, _output.Flush, _ => Rest(), () => false);
            using var window = ApplicationStart.Open(app, _output, _build);
            app.Run(window);
        }
        catch (OperationCanceledException) when (_isDisposing)
        {
            // the test is over
        }
#pragma warning disable CA1031 // Every fault of the program belongs to the step that caused it.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            _fault = ExceptionDispatchInfo.Capture(fault);
        }

        HasEnded = true;
        if (!_isDisposing)
            _rested.Release();
    }

    /// <summary>Nothing left to do: the test looks, and sends the next step.</summary>
    private void Rest()
    {
        if (!_isDisposing)
        {
            Cells = App.Driver!.GetOutputBuffer();
            _rested.Release();
            _go.Wait();
        }

        if (_isDisposing)
            throw new OperationCanceledException(); // unwinds the program, dialogs and all
        _step();
    }
}
