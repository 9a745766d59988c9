using System.Runtime.InteropServices;

namespace PanelTui.Documents.Tests.Files;

/// <summary>Root may write in every folder; a user who may not is tried in the same process.</summary>
internal sealed partial class OrdinaryUser : IDisposable
{
    /// <summary>The user nobody, from memory of Debian's base-passwd.</summary>
    private const uint Nobody = 65534;

    private OrdinaryUser(string[] paths)
    {
        if (!Environment.IsPrivilegedProcess) return;
        foreach (var path in paths.AtLeastOne()) Give(path, Nobody, Nobody).ShouldBe(0);
        _ = SetFileUser(Nobody);
        SetFileUser(Nobody).ShouldBe((int)Nobody);
    }

    /// <summary>
    /// Until it is disposed, this thread has the rights of a user who owns these paths. No change for anybody but
    /// root.
    /// </summary>
    public static OrdinaryUser Owning(params string[] paths) => new(paths);

    public void Dispose()
    {
        if (Environment.IsPrivilegedProcess) _ = SetFileUser(0);
    }

    /// <summary>Of this thread alone. Returns the user before it (setfsuid(2)).</summary>
    [LibraryImport("libc", EntryPoint = "setfsuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int SetFileUser(uint user);

    [LibraryImport("libc", EntryPoint = "chown", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Give(string path, uint user, uint group);
}
