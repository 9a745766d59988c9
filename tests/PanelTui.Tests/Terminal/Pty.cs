using System.Diagnostics;
using System.Drawing;
using System.Runtime.ExceptionServices;
using System.Runtime.InteropServices;
using System.Text;
using PanelTui.Terminal;

namespace PanelTui.Tests.Terminal;

/// <summary>A terminal of the system with a program on it, as a shell starts it: a session of its own.</summary>
internal sealed class Pty : IDisposable
{
    /// <summary>Read and write, no controlling terminal, not handed on to a program that is started.</summary>
    private const int Flags = 0x2 | 0x100 | 0x80000;

    /// <summary>Only a program that hangs is ever waited for so long.</summary>
    private static readonly TimeSpan Hanging = TimeSpan.FromSeconds(15);

    private readonly Lock _gate = new();
    private readonly byte[] _modeBefore = new byte[256];
    private readonly byte[] _modeAfter = new byte[256];
    private readonly StringBuilder _sent = new();
    private readonly Decoder _decoder = Encoding.UTF8.GetDecoder();
    private readonly ManualResetEventSlim _news = new();
    private readonly Thread _reader;
    private volatile bool _isStalled;
    private int _slave;
    private int _master;
    private ExceptionDispatchInfo? _fault;

    private Pty(int columns, int rows)
    {
        Vt = new Vt(new Size(columns, rows));
        _master = PtyCalls.OpenPty(Flags);
        (PtyCalls.Grant(_master) + PtyCalls.Unlock(_master)).ShouldBe(0);
        Name = Marshal.PtrToStringUTF8(PtyCalls.NameOf(_master))!;
        _slave = Libc.Open(Name, Flags);
        _ = Libc.GetMode(_slave, _modeBefore);
        SetSize(columns, rows);
        _reader = new Thread(Read) { IsBackground = true, Name = "far end of the terminal" };
        _reader.Start();
    }

    /// <summary>Why no such terminal can be had here; nothing where it can.</summary>
    public static string? WhyNot => OperatingSystem.IsLinux() && File.Exists("/usr/bin/setsid")
        ? null
        : "needs Linux and setsid";

    public string Name { get; }

    public Process Program { get; private set; } = new();

    /// <summary>What the bytes paint.</summary>
    public Vt Vt { get; }

    /// <summary>All that was sent so far.</summary>
    public string Sent
    {
        get
        {
            lock (_gate)
                return _sent.ToString();
        }
    }

    /// <summary>Whether the program left the line in the mode it was in before.</summary>
    public bool ModeIsRestored => _modeAfter.SequenceEqual(_modeBefore);

    /// <summary>What the program left switched on.</summary>
    public IEnumerable<string> LeftBehind => Vt.Modes.Except(["?25"]).Concat(Vt.Cursor is null ? ["hidden cursor"] : []);

    public static Pty Start(string[] command, Dictionary<string, string?> variables, string folder, int columns = 80, int rows = 24)
    {
        var pty = new Pty(columns, rows);
        var start = new ProcessStartInfo("/bin/sh") { WorkingDirectory = folder };
        foreach (var argument in (string[])["-c", $"exec setsid -c \"$@\" <>{pty.Name} >&0 2>&0", "sh", .. command])
            start.ArgumentList.Add(argument);
        foreach (var (name, value) in variables)
            start.Environment[name] = value;
        pty.Program = Process.Start(start)!;
        return pty;
    }

    public Pty Type(string keys)
    {
        TtyWriter.WriteAll(_master, Encoding.UTF8.GetBytes(keys)).ShouldBeTrue();
        return this;
    }

    public Pty Signal(int number)
    {
        _ = Libc.Signal(Program.Id, number);
        return this;
    }

    public Pty Resize(int columns, int rows)
    {
        lock (_gate)
            Vt.Resize(new Size(columns, rows));
        SetSize(columns, rows);
        return this;
    }

    /// <summary>Waits until the screen is as it should be.</summary>
    public Pty Until(Func<Vt, bool> isSo)
    {
        while (true)
        {
            _news.Reset();
            lock (_gate)
            {
                _fault?.Throw();
                if (isSo(Vt))
                    return this;
            }

            if (!_news.Wait(Hanging))
                throw new TimeoutException($"The screen never came to be so:\n{Vt.Text}\n{Sent.Replace("\e", "^[", StringComparison.Ordinal)}");
        }
    }

    /// <summary>Whether nothing at all comes for so long.</summary>
    public bool IsQuietFor(TimeSpan time)
    {
        _news.Reset();
        return !_news.Wait(time);
    }

    public (int Bytes, int Writes) CostOf(string keys, Func<Vt, bool> done)
    {
        lock (_gate)
            Vt.Start();
        return Type(keys).Until(done).Vt.Cost;
    }

    public int ExitCode()
    {
        Program.WaitForExit(Hanging).ShouldBeTrue($"the program does not end:\n{Sent}");
        _ = Libc.GetMode(_slave, _modeAfter);
        CloseSlave();
        if (!_isStalled)
            _reader.Join(); // it reads on to the end of what was sent
        _fault?.Throw();
        return Program.ExitCode;
    }

    /// <summary>The far end is gone: the window was closed, the connection dropped.</summary>
    public void HangUp()
    {
        CloseSlave();
        var master = _master;
        _master = -1;
        _reader.Join();
        _ = Libc.Close(master);
    }

    /// <summary>Stops reading, as a stalled connection does; returns when the line is full.</summary>
    public void Stall()
    {
        _isStalled = true;
        while (!IsQuietFor(TimeSpan.FromMilliseconds(50)))
        {
            // what was on its way still comes in
        }

        for (var (before, now) = (-1, Waiting); before != now; (before, now) = (now, Waiting))
            IsQuietFor(TimeSpan.FromMilliseconds(100));
    }

    public void Dispose()
    {
        if (!Program.HasExited)
            Program.Kill();
        Program.Dispose();
        if (_master >= 0)
            HangUp();
        _news.Dispose();
    }

    private void Read()
    {
        var bytes = new byte[65_536];
        var letters = new char[65_537];
        for (var master = _master; master == _master;)
        {
            if (_isStalled || !HasNews(master))
                continue;
            var count = Libc.Read(master, bytes, bytes.Length);
            if (count <= 0)
                return; // the program has closed the terminal
            Paint(bytes.AsSpan(0, (int)count), letters);
            _news.Set();
        }
    }

    /// <summary>The bytes the program has sent that nobody has read.</summary>
    private int Waiting
    {
        get
        {
            Span<ushort> count = stackalloc ushort[4];
            _ = Libc.Control(_master, 0x541B, count);
            return count[0] + (count[1] << 16);
        }
    }

    private void SetSize(int columns, int rows) =>
        _ = Libc.Control(_master, 0x5414, [(ushort)rows, (ushort)columns, 0, 0]);

    private void CloseSlave()
    {
        if (_slave >= 0)
            _ = Libc.Close(_slave);
        _slave = -1;
    }

    private void Paint(ReadOnlySpan<byte> bytes, char[] letters)
    {
        lock (_gate)
        {
            _sent.Append(letters, 0, _decoder.GetChars(bytes, letters, flush: false));
            try
            {
                Vt.Write(bytes);
            }
            catch (ShouldAssertException fault)
            {
                _fault = ExceptionDispatchInfo.Capture(fault);
            }
        }
    }

    private static bool HasNews(int fd)
    {
        Libc.PollEntry[] entry = [new(fd, Libc.PollIn)];
        return Libc.Poll(entry, 1, 20) > 0;
    }
}
