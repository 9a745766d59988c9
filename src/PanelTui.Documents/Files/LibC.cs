using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace PanelTui.Documents.Files;

/// <summary>
/// The calls that make a save last, with their results looked at: .NET 10 swallows the failures of fsync.
/// </summary>
[UnsupportedOSPlatform("windows")]
internal static partial class LibC
{
    public const int NoEntry = 2;
    public const int NotAFolder = 20;
    private const int Interrupted = 4;
    private const int AccessDenied = 13;
    private const int ReadOnlyFileSystem = 30;
    private const int Invalid = 22;
    private const int NotSupported = 95;

    // Flags of Linux, open(2) and faccessat(2).
    private const int NonBlocking = 0x800;
    private const int CloseOnExec = 0x80000;
    private const int CurrentFolder = -100;
    private const int WriteRight = 2;
    private const int ByEffectiveUser = 0x200;

    // SIGXFSZ and SIG_IGN of Linux, signal(7).
    private const int SizeLimitSignal = 25;
    private const nint Ignore = 1;

    /// <summary>Waits until the file's bytes are on the disk.</summary>
    /// <exception cref="IOException">The disk says no; its HResult is the error's number.</exception>
    public static void Sync(SafeFileHandle file)
    {
        while (FSync(file) != 0)
        {
            if (Marshal.GetLastPInvokeError() is var error and not Interrupted) throw Failure(error);
        }
    }

    /// <summary>
    /// Waits until a folder's list of names is on the disk. Some file systems cannot, and are let off.
    /// </summary>
    public static void SyncFolder(string folder)
    {
        using var handle = Open(Encoding.UTF8.GetBytes(folder + '\0'), 0);
        if (handle.IsInvalid) throw Failure(Marshal.GetLastPInvokeError());
        while (FSync(handle) != 0)
        {
            var error = Marshal.GetLastPInvokeError();
            if (error is Invalid or NotSupported) return;
            if (error != Interrupted) throw Failure(error);
        }
    }

    /// <summary>
    /// Puts a file in the place of another in one step; across file systems it fails, where .NET would copy.
    /// </summary>
    public static void Rename(string from, string to)
    {
        if (RenameCall(Encoding.UTF8.GetBytes(from + '\0'), Encoding.UTF8.GetBytes(to + '\0')) != 0)
            throw Failure(Marshal.GetLastPInvokeError());
    }

    /// <summary>Gives the file an owner and a group; false where this user may not.</summary>
    public static bool TryGive(SafeFileHandle file, uint owner, uint group) => FChown(file, owner, group) == 0;

    /// <summary>The number of the user whose rights this process has.</summary>
    public static uint User => EffectiveUser();

    /// <summary>True when this user may write the file; false, too, when the disk is mounted read-only.</summary>
    public static bool MayWrite(string path) =>
        Access(CurrentFolder, Encoding.UTF8.GetBytes(path + '\0'), WriteRight, ByEffectiveUser) == 0
        || Marshal.GetLastPInvokeError() is not (AccessDenied or ReadOnlyFileSystem);

    /// <summary>
    /// Opens a file for reading without waiting for anything, and without a lock of the runtime's own on it.
    /// </summary>
    public static SafeFileHandle OpenToRead(string path) =>
        Open(Encoding.UTF8.GetBytes(path + '\0'), NonBlocking | CloseOnExec);

    /// <summary>Has a write beyond the user's size limit fail, as setrlimit(2) says, where it would end the program.</summary>
    public static void OutliveSizeLimit()
    {
        if (OperatingSystem.IsLinux()) _ = Signal(SizeLimitSignal, Ignore);
    }

    public static IOException Failure(int error) => new(Marshal.GetPInvokeErrorMessage(error), error);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int FSync(SafeFileHandle file);

    [LibraryImport("libc", EntryPoint = "signal")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint Signal(int signal, nint handler);

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial SafeFileHandle Open(byte[] path, int flags);

    [LibraryImport("libc", EntryPoint = "geteuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial uint EffectiveUser();

    [LibraryImport("libc", EntryPoint = "faccessat", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Access(int folder, byte[] path, int right, int flags);

    [LibraryImport("libc", EntryPoint = "rename", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int RenameCall(byte[] from, byte[] to);

    [LibraryImport("libc", EntryPoint = "fchown", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int FChown(SafeFileHandle file, uint owner, uint group);
}
