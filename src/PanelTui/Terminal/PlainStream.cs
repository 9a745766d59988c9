using System.Runtime.InteropServices;

namespace PanelTui.Terminal;

/// <summary>A file that was open when the program started, read and written with read(2) and write(2).</summary>
/// <remarks>
/// A FileStream over the same number writes at a place it keeps by itself: two commands into one file would overwrite
/// each other. A reader that has gone away is no error: what it no longer reads is dropped. Nor is it one that a message
/// for standard error cannot be written: there is no other place for it, and the exit code says enough.
/// </remarks>
internal sealed class PlainStream(int fd, bool isOpen) : Stream
{
    private const int StandardError = 2;

    private bool _readerIsGone;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    /// <exception cref="IOException">It is closed, or the system gives no bytes.</exception>
    public override int Read(Span<byte> buffer)
    {
        ThrowIfClosed();
        while (buffer.Length > 0)
        {
            var count = Libc.Read(fd, buffer, buffer.Length);
            if (count >= 0)
                return (int)count;
            if (!TtyWriter.MayTryAgain(fd, Libc.PollIn))
                throw Fault(Marshal.GetLastPInvokeError());
        }

        return 0;
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <exception cref="IOException">It is closed, or the system does not take the bytes.</exception>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (_readerIsGone || buffer.Length == 0 || (fd == StandardError && !isOpen))
            return;
        ThrowIfClosed();
        if (TtyWriter.WriteAll(fd, buffer))
            return;
        var error = Marshal.GetLastPInvokeError();
        _readerIsGone = error == Libc.BrokenPipe;
        if (!_readerIsGone && fd != StandardError)
            throw Fault(error);
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush()
    {
        // Nothing is held back.
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    private void ThrowIfClosed()
    {
        if (!isOpen)
            throw new IOException("it is closed");
    }

    private static IOException Fault(int error) => new(Marshal.GetPInvokeErrorMessage(error));
}
