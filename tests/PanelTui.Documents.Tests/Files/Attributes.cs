using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using System.Text;

namespace PanelTui.Documents.Tests.Files;

/// <summary>Extended attributes of a file, for tests; access lists in the kernel's layout, acl(5) and linux/posix_acl_xattr.h.</summary>
[SupportedOSPlatform("linux")]
internal static partial class Attributes
{
    public const string AccessList = "system.posix_acl_access";
    public const string FolderDefault = "system.posix_acl_default";

    /// <summary>Owner reads and writes, one other user reads, nobody else anything.</summary>
    public static byte[] OpenTo(uint user)
    {
        (ushort Tag, ushort Rights, uint Id)[] entries =
            [(1, 6, uint.MaxValue), (2, 4, user), (4, 0, uint.MaxValue), (0x10, 4, uint.MaxValue), (0x20, 0, uint.MaxValue)];
        var bytes = new byte[4 + entries.Length * 8];
        bytes[0] = 2;
        foreach (var (entry, at) in entries.Select((entry, index) => (entry, 4 + index * 8)))
        {
            BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at), entry.Tag);
            BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at + 2), entry.Rights);
            BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(at + 4), entry.Id);
        }

        return bytes;
    }

    /// <summary>False where the file system has none, or this user may not.</summary>
    public static bool TrySet(string path, string name, byte[] value) => Set(Zero(path), Zero(name), value, (nuint)value.Length, 0) == 0;

    public static byte[]? Of(string path, string name)
    {
        var buffer = new byte[1024];
        var size = Get(Zero(path), Zero(name), buffer, (nuint)buffer.Length);
        return size < 0 ? null : buffer[..(int)size];
    }

    private static byte[] Zero(string text) => Encoding.UTF8.GetBytes(text + '\0');

    [LibraryImport("libc", EntryPoint = "setxattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Set(byte[] path, byte[] name, byte[] value, nuint size, int flags);

    [LibraryImport("libc", EntryPoint = "getxattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint Get(byte[] path, byte[] name, byte[] value, nuint size);
}
