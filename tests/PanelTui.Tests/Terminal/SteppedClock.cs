using Terminal.Gui.Time;

namespace PanelTui.Tests.Terminal;

/// <summary>A clock that goes when it is told to.</summary>
internal sealed class SteppedClock : TimeProvider
{
    public VirtualTimeProvider Provider { get; } = new();

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => Provider.Now.Ticks;

    public void Advance(TimeSpan time) => Provider.Advance(time);
}
