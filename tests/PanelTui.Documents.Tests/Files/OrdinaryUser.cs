using System.Runtime.InteropServices;

namespace PanelTui.Documents.Tests.Files;

/// <summary>Root may write in every folder; a user who may not is tried in the same process.</summary>
internal sealed partial class OrdinaryUser : IDisposable
{
    /// <summary>The user nobody, from memory of Debian's base-passwd.</summary>
    private const uint Nobody = 65534;

    /// <summary>setresuid(2), by its number: the C library's function would change every thread of the process.</summary>
    private static readonly nint SetUsers = RuntimeInformation.ProcessArchitecture == Architecture.Arm64 ? 147 : 117;

    private readonly bool _isRoot = Environment.IsPrivilegedProcess;

    private OrdinaryUser(string[] paths)
    {
        if (!_isRoot) return;
        foreach (var path in paths.AtLeastOne()) Give(path, Nobody, Nobody).ShouldBe(0);
        Call(SetUsers, -1, (nint)Nobody, -1).ShouldBe(0);
    }

    /// <summary>
    /// Until it is disposed, this thread has the rights of a user who owns these paths. No change for anybody but
    /// root.
    /// </summary>
    public static OrdinaryUser Owning(params string[] paths) => new(paths);

    public void Dispose()
    {
        if (_isRoot) Call(SetUsers, -1, 0, -1).ShouldBe(0);
    }

    [LibraryImport("libc", EntryPoint = "syscall")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint Call(nint number, nint real, nint effective, nint saved);

    [LibraryImport("libc", EntryPoint = "chown", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Give(string path, uint user, uint group);
}
