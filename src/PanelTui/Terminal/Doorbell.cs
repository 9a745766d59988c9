namespace PanelTui.Terminal;

/// <summary>Wakes the loop from any thread; rung twice before it is heard, it is heard once.</summary>
internal sealed class Doorbell : IDisposable
{
    private readonly ManualResetEventSlim _rung = new(false, 0);

    public void Ring() => _rung.Set();

    public void Wait(int milliseconds)
    {
        _rung.Wait(milliseconds);
        _rung.Reset();
    }

    public void Dispose() => _rung.Dispose();
}
