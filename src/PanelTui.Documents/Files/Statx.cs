using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using System.Text;

namespace PanelTui.Documents.Files;

/// <summary>The Linux call that tells owner, inode and link count, which .NET does not.</summary>
/// <remarks>
/// Offsets from the manual page statx(2); the layout is the same on every architecture, unlike that of stat(2).
/// </remarks>
[SupportedOSPlatform("linux")]
internal static partial class Statx
{
    private const int CurrentFolder = -100;
    private const uint BasicFields = 0x7FF;
    private const int KindMask = 0xF000;
    private const int RegularFile = 0x8000;

    public static FileIdentity? Of(string path)
    {
        Span<byte> buffer = stackalloc byte[256];
        buffer.Clear();
        if (Call(CurrentFolder, Encoding.UTF8.GetBytes(path + '\0'), 0, BasicFields, ref MemoryMarshal.GetReference(buffer)) == 0)
            return Parse(buffer);
        var error = Marshal.GetLastPInvokeError();
        return error is LibC.NoEntry or LibC.NotAFolder ? null : throw LibC.Failure(error);
    }

    private static FileIdentity Parse(ReadOnlySpan<byte> at)
    {
        var mode = BinaryPrimitives.ReadUInt16LittleEndian(at[28..]);
        var seconds = BinaryPrimitives.ReadInt64LittleEndian(at[112..]);
        var nanoseconds = BinaryPrimitives.ReadUInt32LittleEndian(at[120..]);
        return new(
            (mode & KindMask) == RegularFile,
            ((ulong)BinaryPrimitives.ReadUInt32LittleEndian(at[136..]) << 32) | BinaryPrimitives.ReadUInt32LittleEndian(at[140..]),
            BinaryPrimitives.ReadUInt64LittleEndian(at[32..]),
            (long)BinaryPrimitives.ReadUInt64LittleEndian(at[40..]),
            DateTimeOffset.UnixEpoch.AddSeconds(seconds).AddTicks(nanoseconds / 100),
            (UnixFileMode)(mode & 0xFFF),
            BinaryPrimitives.ReadUInt32LittleEndian(at[20..]),
            BinaryPrimitives.ReadUInt32LittleEndian(at[24..]),
            BinaryPrimitives.ReadUInt32LittleEndian(at[16..]));
    }

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Call(int folder, byte[] path, int flags, uint mask, ref byte buffer);
}
