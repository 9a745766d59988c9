using System.Runtime.Versioning;

namespace PanelTui.Documents.Files;

/// <summary>Folders of mode 0700 that belong to this user.</summary>
/// <remarks>
/// Unsaved work is read back from them. A folder that others may write could hold work that this user never did, or a
/// link that
/// leads a write elsewhere.
/// </remarks>
[UnsupportedOSPlatform("windows")]
internal static class PrivateFolder
{
    private const UnixFileMode OwnerAlone = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode OthersWrite = UnixFileMode.GroupWrite | UnixFileMode.OtherWrite;
    private const uint SystemUser = 0;

    /// <summary>
    /// Makes what is missing of the way to a folder, whatever the user's mask, and checks the part from the root on.
    /// </summary>
    /// <param name="root">The state folder.</param>
    /// <param name="folder">The root itself or a folder below it.</param>
    /// <exception cref="FileProblem">A folder on the way belongs to another user, or others may write
    /// there.</exception>
    public static void Make(string root, string folder)
    {
        if (Path.GetDirectoryName(root) is { } above)
        {
            MakeMissing(above);
            CheckAbove(above);
        }

        foreach (var step in StepsDown(root, folder))
        {
            MakeMissing(step);
            CheckOwn(step);
        }
    }

    private static IEnumerable<string> StepsDown(string root, string folder) =>
        folder.Length > root.Length && Path.GetDirectoryName(folder) is { } above
            ? [.. StepsDown(root, above), folder]
            : [folder];

    private static void MakeMissing(string folder)
    {
        if (Directory.Exists(folder)) return;
        if (Path.GetDirectoryName(folder) is { } above) MakeMissing(above);
        Directory.CreateDirectory(folder, OwnerAlone);
        File.SetUnixFileMode(folder, OwnerAlone); // the user's mask may have taken some of it away
    }

    /// <summary>
    /// The folder of all programs' state: of this user or the system, and nobody else can rename what is in it.
    /// </summary>
    private static void CheckAbove(string folder)
    {
        if (!OperatingSystem.IsLinux() || FileIdentity.Of(folder) is not { } found) return;
        if (found.Owner != LibC.User && found.Owner != SystemUser) throw OfAnother(folder);
        if ((found.Mode & (UnixFileMode.OtherWrite | UnixFileMode.StickyBit)) == UnixFileMode.OtherWrite)
            throw OpenToOthers(folder);
    }

    private static void CheckOwn(string folder)
    {
        if (!OperatingSystem.IsLinux() || FileIdentity.Of(folder) is not { } found) return;
        if (found.Owner != LibC.User) throw OfAnother(folder);
        if ((found.Mode & OthersWrite) != 0) throw OpenToOthers(folder);
        if (found.Mode != OwnerAlone) File.SetUnixFileMode(folder, OwnerAlone);
    }

    private static FileProblem OfAnother(string folder) => new(
        FileFault.NoPermission,
        $"Unsaved work cannot be kept: {folder} belongs to another user."
            + " Set XDG_STATE_HOME to a folder of your own. Save often.");

    private static FileProblem OpenToOthers(string folder) => new(
        FileFault.NoPermission,
        $"Unsaved work cannot be kept: others may write in {folder}."
            + " Run 'chmod 700' on it if it is yours. Save often.");
}
