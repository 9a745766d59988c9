using System.Collections.Concurrent;
using System.Text;
using Terminal.Gui.Drivers;

namespace PanelTui.Terminal;

/// <summary>Reads the keyboard: sleeps until there is something, and hands on whole keys only.</summary>
internal sealed class TtyInput(InputFilter filter, Action wake, Action onHangup) : IInput<char>
{
    private const int Keyboard = 0;
    private const int MostAtOnce = 1 << 20;

    private readonly Decoder _decoder = Encoding.UTF8.GetDecoder(); // keeps a letter that was cut in two for the next read
    private readonly byte[] _bytes = new byte[65_536];
    private readonly char[] _letters = new char[65_537];
    private readonly StringBuilder _read = new();
    private readonly int[] _stop = new int[2];
    private ConcurrentQueue<char> _queue = new();

    public CancellationTokenSource? ExternalCancellationTokenSource { get; set; }

    public void Initialize(ConcurrentQueue<char> inputQueue)
    {
        _queue = inputQueue;
        _ = Libc.Pipe(_stop);
    }

    public void Run(CancellationToken runCancellationToken)
    {
        using var registration = runCancellationToken.Register(() => Libc.Write(_stop[1], [1], 1));
        while (!runCancellationToken.IsCancellationRequested)
        {
            Libc.PollEntry[] entries = [new(Keyboard, Libc.PollIn), new(_stop[0], Libc.PollIn)];
            var ready = Libc.Poll(entries, 2, (int?)filter.Patience?.TotalMilliseconds ?? -1);
            if (entries[1].CanRead)
                return;
            if (ready == 0)
                Deliver(filter.Expire());
            else if (ready > 0 && !ReadKeyboard(entries[0]))
                return;
        }
    }

    public void Dispose()
    {
        // The pipe stays open: the token may still be cancelled, and the process is about to end.
    }

    /// <returns>False when the line is gone.</returns>
    private bool ReadKeyboard(Libc.PollEntry keyboard)
    {
        var alive = keyboard.CanRead ? ReadAll() : !keyboard.IsGone;
        Deliver(filter.Feed(_read.ToString()));
        _read.Clear();
        if (!alive)
            onHangup();
        return alive;
    }

    /// <summary>Reads all that has come, so that a paste is seen whole.</summary>
    private bool ReadAll()
    {
        do
        {
            var count = Libc.Read(Keyboard, _bytes, _bytes.Length);
            if (count <= 0)
                return count < 0 && TtyWriter.MayTryAgain(Keyboard, Libc.PollIn);
            var letters = _decoder.GetChars(_bytes.AsSpan(0, (int)count), _letters, flush: false);
            _read.Append(_letters, 0, letters);
        }
        while (_read.Length < MostAtOnce && HasMore());

        return true;
    }

    private static bool HasMore()
    {
        Libc.PollEntry[] entry = [new(Keyboard, Libc.PollIn)];
        return Libc.Poll(entry, 1, 0) > 0 && entry[0].CanRead;
    }

    private void Deliver(string keys)
    {
        if (keys.Length == 0)
            return;
        foreach (var letter in keys)
            _queue.Enqueue(letter);
        wake();
    }
}
