using System.Runtime.InteropServices;

[assembly: DefaultDllImportSearchPaths(DllImportSearchPath.System32)] // the system's own library, never one beside the program

namespace PanelTui.Terminal;

/// <summary>The few calls of the C library that this folder lives on; Linux and macOS.</summary>
internal static partial class Libc
{
    public const int Interrupted = 4;
    public const int BrokenPipe = 32;
    public const int TryAgain = 11;
    public const int TryAgainOnMac = 35;

    public const short PollIn = 1;
    public const short PollOut = 4;

    public const int GetFlags = 1;
    public const int CloseOnExec = 1;
    public const int BrokenPipeSignal = 13;
    public const nint Ignore = 1;
    private const int ReadAndWrite = 2;
    private const int MostArenas = -8; // M_ARENA_MAX of malloc.h

    [LibraryImport("libc", EntryPoint = "isatty")]
    internal static partial int IsTerminal(int fd);

    [LibraryImport("libc", EntryPoint = "tcgetattr")]
    internal static partial int GetMode(int fd, Span<byte> termios);

    [LibraryImport("libc", EntryPoint = "tcsetattr")]
    internal static partial int SetMode(int fd, int when, ReadOnlySpan<byte> termios);

    [LibraryImport("libc", EntryPoint = "cfmakeraw")]
    internal static partial void MakeRaw(Span<byte> termios);

    [LibraryImport("libc", EntryPoint = "tcflush")]
    internal static partial int Discard(int fd, int queue);

    [LibraryImport("libc", EntryPoint = "ioctl")]
    internal static partial int Control(int fd, nuint request, Span<ushort> argument);

    [LibraryImport("libc", EntryPoint = "read", SetLastError = true)]
    internal static partial nint Read(int fd, Span<byte> buffer, nint count);

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    internal static partial nint Write(int fd, ReadOnlySpan<byte> buffer, nint count);

    [LibraryImport("libc", EntryPoint = "poll", SetLastError = true)]
    internal static partial int Poll(Span<PollEntry> entries, nuint count, int milliseconds);

    [LibraryImport("libc", EntryPoint = "pipe")]
    internal static partial int Pipe(Span<int> ends);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "close")]
    internal static partial int Close(int fd);

    [LibraryImport("libc", EntryPoint = "fcntl", SetLastError = true)]
    internal static partial int FlagsOf(int fd, int command);

    [LibraryImport("libc", EntryPoint = "signal")]
    internal static partial nint OnSignal(int signal, nint action);

    /// <summary>Gives a closed descriptor to the null device; nothing when there is none.</summary>
    internal static void Occupy(int fd)
    {
        var nothing = Open("/dev/null", ReadAndWrite);
        if (nothing < 0 || nothing == fd)
            return;
        _ = DuplicateTo(nothing, fd);
        _ = Close(nothing);
    }

    [LibraryImport("libc", EntryPoint = "mallopt")]
    private static partial int SetAllocator(int parameter, int value);

    /// <summary>
    /// Has all threads share one heap of the C library: with one for each, every thread reserves 64 MB of addresses, and a
    /// limit of addresses (ulimit -v) is reached by reserves alone. Only glibc knows the call.
    /// </summary>
    internal static void ShareOneHeap()
    {
        try
        {
            _ = SetAllocator(MostArenas, 1);
        }
        catch (EntryPointNotFoundException)
        {
            // Another C library reserves nothing for a thread.
        }
    }

    [LibraryImport("libc", EntryPoint = "dup")]
    internal static partial int Duplicate(int fd);

    [LibraryImport("libc", EntryPoint = "dup2")]
    internal static partial int DuplicateTo(int from, int to);

    [LibraryImport("libc", EntryPoint = "mmap")]
    internal static partial nint Map(nint at, nint length, int access, int flags, int fd, nint offset);

    [LibraryImport("libc", EntryPoint = "munmap")]
    internal static partial int Unmap(nint at, nint length);

    [LibraryImport("libc", EntryPoint = "fchdir")]
    internal static partial int GoTo(int directory);

    [LibraryImport("libc", EntryPoint = "kill")]
    internal static partial int Signal(int process, int signal);

    /// <summary>Ends the process at once: no handler, no flush, no lock is waited for.</summary>
    [LibraryImport("libc", EntryPoint = "_exit")]
    internal static partial void ExitNow(int code);

    [StructLayout(LayoutKind.Sequential)]
    internal struct PollEntry(int fd, short events)
    {
        public int Fd = fd;
        public short Events = events;
        public short Returned;

        public readonly bool CanRead => (Returned & PollIn) != 0;

        /// <summary>Error, hang-up or a closed descriptor.</summary>
        public readonly bool IsGone => (Returned & 0x38) != 0;
    }
}
