using System.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.ViewBase;

namespace PanelTui.Terminal;

/// <summary>The size of the window, asked of the system and never of the terminal.</summary>
/// <remarks>A dragged window edge changes the size a hundred times a second; a new size counts once it has rested.</remarks>
internal sealed class TtySize(Func<Size> measure, TimeProvider clock) : ISizeMonitor
{
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(30);
    private static readonly TimeSpan LongestWait = TimeSpan.FromMilliseconds(150);

    private Size _reported = measure();
    private Size _seen;
    private long _firstChange;
    private long _lastChange;

    public event EventHandler<SizeChangedEventArgs>? SizeChanged;

    /// <summary>True while a new size has been seen that has not yet rested: ask again soon.</summary>
    public bool IsPending { get; private set; }

    public bool Poll()
    {
        var now = measure();
        if (now == _reported)
            return IsPending = false;
        Notice(now);
        if (clock.GetElapsedTime(_lastChange) < Rest && clock.GetElapsedTime(_firstChange) < LongestWait)
            return false;
        IsPending = false;
        _reported = now;
        SizeChanged?.Invoke(this, new SizeChangedEventArgs(now));
        return true;
    }

    private void Notice(Size now)
    {
        if (!IsPending)
            _firstChange = clock.GetTimestamp();
        if (!IsPending || now != _seen)
            _lastChange = clock.GetTimestamp();
        _seen = now;
        IsPending = true;
    }

    /// <summary>Columns and rows of the window; 80 by 24 where the system does not know, as on a serial line.</summary>
    public static Size Measure()
    {
        Span<ushort> size = stackalloc ushort[4];
        var asked = Libc.Control(1, OperatingSystem.IsMacOS() ? 0x40087468u : 0x5413u, size);
        return asked == 0 && size[0] > 0 && size[1] > 0 ? new Size(size[1], size[0]) : new Size(80, 24);
    }
}
