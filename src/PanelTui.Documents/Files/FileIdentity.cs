namespace PanelTui.Documents.Files;

/// <summary>
/// What the file system knows about a path: which file it is, of what kind, whose, and how many names it has.
/// </summary>
internal sealed record FileIdentity(
    bool IsRegular, ulong Device, ulong Inode, long Size, DateTimeOffset Modified, UnixFileMode Mode, uint Owner, uint Group, uint Links)
{
    private const UnixFileMode Writable = UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite;

    /// <summary>Whether nobody may write it, root included as far as we are concerned.</summary>
    public bool IsWriteProtected => (Mode & Writable) == 0;

    /// <summary>Looks a path up, links followed; null where there is nothing.</summary>
    public static FileIdentity? Of(string path) => OperatingSystem.IsLinux() ? Statx.Of(path) : Portable(path);

    // Without inode and link count: still enough, with the content's hash, to see a change.
    private static FileIdentity? Portable(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists && !Directory.Exists(path)) return null;
        var mode = OperatingSystem.IsWindows() ? ModeOf(file) : file.UnixFileMode;
        return new(
            file.Exists && (file.Attributes & (FileAttributes.Device | FileAttributes.Directory)) == 0,
            0, 0, file.Exists ? file.Length : 0, file.LastWriteTimeUtc, mode, 0, 0, 1);
    }

    private static UnixFileMode ModeOf(FileInfo file) =>
        file.IsReadOnly ? UnixFileMode.UserRead : UnixFileMode.UserRead | UnixFileMode.UserWrite;
}
