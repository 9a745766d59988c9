using System.Collections.Concurrent;
using Terminal.Gui.Drivers;

namespace PanelTui.Tests.Terminal;

/// <summary>A keyboard nobody touches: a test puts its keys into the queue itself.</summary>
internal sealed class SilentInput : IInput<char>
{
    public CancellationTokenSource? ExternalCancellationTokenSource { get; set; }

    public void Initialize(ConcurrentQueue<char> inputQueue)
    {
    }

    public void Run(CancellationToken runCancellationToken)
    {
        // Returns at once: a waiting reader would hold a thread of the pool for every program that is driven.
    }

    public void Dispose()
    {
    }
}
