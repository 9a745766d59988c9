namespace PanelTui.Terminal;

/// <summary>The terminal between the first and the last byte of the full screen: taken, and given back.</summary>
internal sealed class TerminalSession(TtyWriter writer)
{
    /// <summary>A stalled line must not hold up the end of the program any longer than this.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(300);

    private readonly TtyMode _mode = new();

    public void EnterRaw() => _mode.EnterRaw();

    /// <summary>Gives the terminal back on this thread; safe to call twice and from any thread.</summary>
    public void GiveBack()
    {
        writer.WriteLast(TerminalModes.Leave);
        _mode.Restore();
    }

    /// <summary>Gives the terminal back on a thread of its own, and goes on without it when the line is stalled.</summary>
    /// <returns>False when the line did not take the bytes in time; its mode is restored all the same.</returns>
    public bool GiveBackInTime()
    {
        var thread = new Thread(GiveBack) { IsBackground = true };
        thread.Start();
        if (thread.Join(Patience))
            return true;
        _mode.Restore();
        return false;
    }
}
