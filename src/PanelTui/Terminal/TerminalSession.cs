namespace PanelTui.Terminal;

/// <summary>The terminal between the first and the last byte of the full screen: taken, and given back.</summary>
internal sealed class TerminalSession : IDisposable
{
    /// <summary>A stalled line must not hold up the end of the program any longer than this.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(300);

    private const int Stack = 256 * 1024;

    private readonly TtyWriter _writer;
    private readonly TtyMode _mode = new();
    private readonly ManualResetEventSlim _asked = new(false, 0);
    private readonly ManualResetEventSlim _done = new(false, 0);

    /// <remarks>The thread that gives the terminal back waits from the start: at the end there may be no memory for one.</remarks>
    /// <exception cref="OutOfMemoryException">There is none now either.</exception>
    public TerminalSession(TtyWriter writer)
    {
        _writer = writer;
        new Thread(GiveBackWhenAsked, Stack) { IsBackground = true, Name = "end of the terminal" }.Start();
    }

    public void EnterRaw() => _mode.EnterRaw();

    /// <summary>Gives the terminal back on this thread; safe to call twice and from any thread.</summary>
    public void GiveBack()
    {
        _writer.WriteLast(TerminalModes.Leave);
        _mode.Restore();
    }

    /// <summary>Gives the terminal back on a thread of its own, and goes on without it when the line is stalled.</summary>
    /// <returns>False when the line did not take the bytes in time; its mode is restored all the same.</returns>
    public bool GiveBackInTime()
    {
        _asked.Set();
        if (_done.Wait(Patience))
            return true;
        _mode.Restore();
        return false;
    }

    /// <summary>Lets the waiting thread go; call after the terminal was given back, or never taken.</summary>
    public void Dispose() => _asked.Set();

    private void GiveBackWhenAsked()
    {
        _asked.Wait();
        GiveBack();
        _done.Set();
    }
}
