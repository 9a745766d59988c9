using System.Text;
using PanelTui.Terminal;

namespace PanelTui.Tests.Terminal;

/// <summary>Standard streams as the system has them, each on a pipe or a file of its own.</summary>
public sealed class PlainStreamTests
{
    private const int WriteOnly = 1;
    private const int AtOnce = 0x800; // O_NONBLOCK on Linux

    [Fact]
    public void All_is_written_where_the_line_takes_only_a_little_at_a_time()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "needs /proc");
        Span<int> ends = stackalloc int[2];
        Libc.Pipe(ends).ShouldBe(0);
        var (from, to) = (ends[0], ends[1]);
        var impatient = Libc.Open($"/proc/self/fd/{to}", WriteOnly | AtOnce);
        var sent = Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(0, 50_000).Select(line => $"line {line}\n")));
        var writer = new Thread(() =>
        {
            using var stream = new PlainStream(impatient, true);
            stream.Write(sent);
            _ = Libc.Close(impatient) + Libc.Close(to);
        });
        writer.Start();
        using var got = new MemoryStream();
        using (var reader = new PlainStream(from, true)) reader.CopyTo(got);
        writer.Join();
        got.ToArray().ShouldBe(sent);
        _ = Libc.Close(from);
    }

    [Fact]
    public void A_reader_that_has_gone_away_is_no_error()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "needs pipes of the system");
        Span<int> ends = stackalloc int[2];
        Libc.Pipe(ends).ShouldBe(0);
        _ = Libc.Close(ends[0]);
        using var stream = new PlainStream(ends[1], true);
        Should.NotThrow(() => stream.Write("one"u8.ToArray()));
        _ = Libc.Close(ends[1]);
    }

    [Fact]
    public void A_full_disk_is_an_error_with_the_system_s_words()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "needs /dev/full");
        var full = Libc.Open("/dev/full", WriteOnly);
        using var stream = new PlainStream(full, true);
        Should.Throw<IOException>(() => stream.Write("one"u8.ToArray())).Message.ShouldBe("No space left on device");
        _ = Libc.Close(full);
    }

    [Fact]
    public void A_stream_that_is_closed_says_so_and_a_message_with_no_place_is_dropped()
    {
        using var input = new PlainStream(0, false);
        Should.Throw<IOException>(() => input.ReadByte()).Message.ShouldBe("it is closed");
        using var output = new PlainStream(1, false);
        Should.Throw<IOException>(() => output.WriteByte(1)).Message.ShouldBe("it is closed");
        using var error = new PlainStream(2, false);
        Should.NotThrow(() => error.WriteByte(1));
    }
}
