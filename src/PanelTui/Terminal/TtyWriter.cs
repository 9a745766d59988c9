using System.Runtime.InteropServices;

namespace PanelTui.Terminal;

/// <summary>Takes the bytes of a frame; a test may give one of its own.</summary>
internal delegate void ByteSink(ReadOnlySpan<byte> bytes);

/// <summary>Writes to the terminal, whole, until it is closed or the line is gone.</summary>
internal sealed class TtyWriter(Action onHangup)
{
    private const int Screen = 1;

    private readonly Lock _gate = new();
    private volatile bool _closed;

    public void Write(ReadOnlySpan<byte> bytes)
    {
        if (_closed)
            return;
        lock (_gate)
        {
            if (!_closed && !WriteAll(Screen, bytes))
                onHangup();
        }
    }

    /// <summary>Writes the last words, after which nothing more is written.</summary>
    /// <remarks>A frame that is stuck on a stalled line holds the gate; the last words then go out without it.</remarks>
    public void WriteLast(ReadOnlySpan<byte> bytes)
    {
        _closed = true;
        var entered = _gate.TryEnter(100);
        _ = WriteAll(Screen, bytes);
        if (entered)
            _gate.Exit();
    }

    /// <summary>Lets frames through again after <see cref="WriteLast"/>: the program was suspended and goes on.</summary>
    public void Reopen() => _closed = false;

    /// <returns>False when the line is gone.</returns>
    public static bool WriteAll(int fd, ReadOnlySpan<byte> bytes)
    {
        while (bytes.Length > 0)
        {
            var written = Libc.Write(fd, bytes, bytes.Length);
            if (written > 0)
                bytes = bytes[(int)written..];
            else if (!MayTryAgain(fd, Libc.PollOut))
                return false;
        }

        return true;
    }

    /// <summary>Whether the last read or write was only put off; waits until it can go on.</summary>
    public static bool MayTryAgain(int fd, short awaited)
    {
        switch (Marshal.GetLastPInvokeError())
        {
            case Libc.Interrupted:
                return true;
            case Libc.TryAgain or Libc.TryAgainOnMac:
                _ = Libc.Poll([new Libc.PollEntry(fd, awaited)], 1, -1);
                return true;
            default:
                return false;
        }
    }
}
