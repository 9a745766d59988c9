using System.Runtime.InteropServices;

namespace PanelTui.Tests.Terminal;

/// <summary>What it takes to make a terminal of the system.</summary>
internal static partial class PtyCalls
{
    [LibraryImport("libc", EntryPoint = "posix_openpt")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    public static partial int OpenPty(int flags);

    [LibraryImport("libc", EntryPoint = "grantpt")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    public static partial int Grant(int fd);

    [LibraryImport("libc", EntryPoint = "unlockpt")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    public static partial int Unlock(int fd);

    [LibraryImport("libc", EntryPoint = "ptsname")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    public static partial nint NameOf(int fd);
}
