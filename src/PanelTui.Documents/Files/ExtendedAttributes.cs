using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace PanelTui.Documents.Files;

/// <summary>What Linux keeps beside a file's mode: access lists, security labels and the user's own attributes.</summary>
[SupportedOSPlatform("linux")]
internal static partial class ExtendedAttributes
{
    /// <summary>The access list, xattr(7) and acl(5): a new file may have one from its folder, which would open it to others.</summary>
    private const string AccessList = "system.posix_acl_access";

    /// <summary>The kernel's own sums over a file's content, which no other content can have.</summary>
    private static readonly string[] OfContent = ["security.ima", "security.evm"];

    private const int NoAttribute = 61;
    private const int TooSmall = 34;
    private const int NotSupported = 95;

    /// <summary>Gives the new file what the old one has, the access list exactly; false where that cannot be done.</summary>
    public static bool TryCopy(string old, string made, SafeFileHandle file)
    {
        var wanted = NamesOf(old);
        foreach (var name in wanted.Except(OfContent))
        {
            if (Value(old, name) is { } value && !(Value(made, name)?.AsSpan().SequenceEqual(value) ?? false)
                && Set(file, Zero(name), value, (nuint)value.Length, 0) != 0)
                return false;
        }

        return wanted.Contains(AccessList) || Remove(file, Zero(AccessList)) == 0
            || Marshal.GetLastPInvokeError() is NoAttribute or NotSupported;
    }

    private static string[] NamesOf(string path) =>
        Encoding.UTF8.GetString(Read(buffer => List(Zero(path), buffer, (nuint)buffer.Length)) ?? [])
            .Split('\0', StringSplitOptions.RemoveEmptyEntries);

    private static byte[]? Value(string path, string name) =>
        Read(buffer => Get(Zero(path), Zero(name), buffer, (nuint)buffer.Length));

    // Asked with an empty buffer the call tells the size, which may have grown when it is asked again.
    private static byte[]? Read(Func<byte[], nint> call)
    {
        while (true)
        {
            var size = call([]);
            if (size == 0) return [];
            var buffer = new byte[Math.Max(size, 0)];
            var read = size < 0 ? size : call(buffer);
            if (read >= 0) return buffer[..(int)read];
            var error = Marshal.GetLastPInvokeError();
            if (error is NoAttribute or NotSupported) return null;
            if (error != TooSmall) throw LibC.Failure(error);
        }
    }

    private static byte[] Zero(string text) => Encoding.UTF8.GetBytes(text + '\0');

    [LibraryImport("libc", EntryPoint = "listxattr", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint List(byte[] path, byte[] names, nuint size);

    [LibraryImport("libc", EntryPoint = "getxattr", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint Get(byte[] path, byte[] name, byte[] value, nuint size);

    [LibraryImport("libc", EntryPoint = "fsetxattr", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Set(SafeFileHandle file, byte[] name, byte[] value, nuint size, int flags);

    [LibraryImport("libc", EntryPoint = "fremovexattr", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Remove(SafeFileHandle file, byte[] name);
}
