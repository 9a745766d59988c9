using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using Microsoft.Win32.SafeHandles;

namespace PanelTui.Documents.Files;

/// <summary>
/// Linux's locks on single bytes of an open file, fcntl(2) "Open file description locks"; the bytes need not exist.
/// </summary>
/// <remarks>
/// A lock for reading needs no right to write, several may hold one, it hinders no program that reads, writes or
/// replaces the file,
/// and the system drops it when its process ends in any way. Unlike flock(2) it does not meet the locks that .NET sets
/// by itself.
/// </remarks>
[SupportedOSPlatform("linux")]
internal static partial class ByteLock
{
    private const int Query = 36;
    private const int Set = 37;
    private const short ForReading = 0;
    private const short ForWriting = 1;
    private const short None = 2;

    /// <summary>False where the layout below is another one.</summary>
    public static bool IsKnownHere => Environment.Is64BitProcess;

    /// <summary>Locks one byte for reading; false when the file system has no such locks.</summary>
    public static bool TryShare(SafeFileHandle file, long place)
    {
        var wanted = new Range { Kind = ForReading, Start = place, Length = 1 };
        return Control(file, Set, ref wanted) == 0;
    }

    /// <summary>
    /// Returns the first byte from a place on that somebody else has locked, through another opening of the file; null
    /// when there is none.
    /// </summary>
    public static long? FirstOfOthers(SafeFileHandle file, long from, long length)
    {
        var asked = new Range { Kind = ForWriting, Start = from, Length = length };
        return Control(file, Query, ref asked) == 0 && asked.Kind != None ? asked.Start : null;
    }

    [LibraryImport("libc", EntryPoint = "fcntl", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Control(SafeFileHandle file, int command, ref Range range);

    /// <summary>`struct flock` of a 64-bit Linux.</summary>
    [StructLayout(LayoutKind.Sequential)]
    private struct Range
    {
        public short Kind;
        public short Whence;
        public long Start;
        public long Length;
        public int Process;
    }
}
