namespace PanelTui.Documents.Files;

/// <summary>
/// One save: check that the file is the expected one, write a whole new file beside it, wait for the disk, check again,
/// and put the new file in its place in one step.
/// </summary>
internal static class SafeSave
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode Everyone = OwnerOnly
        | UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.OtherRead | UnixFileMode.OtherWrite;

    public static SavedFile Write(SaveTarget target, byte[] bytes, DiskState expected)
    {
        RefuseOtherThan(target, expected);
        if (target.Identity is { IsWriteProtected: true })
            throw new FileProblem(FileFault.ReadOnly, $"{target.Name} is write-protected and was not saved.");
        if (target.Identity is null)
            return Replaced(target, bytes, expected, out _) ?? throw new UnauthorizedAccessException();
        using (File.OpenHandle(target.Path, access: FileAccess.Write, share: FileShare.ReadWrite)) { }
        if (target.Identity.Links > 1) return InPlaceSave.Write(target, bytes, "it has other names (hard links)");
        return Replaced(target, bytes, expected, out var why) ?? InPlaceSave.Write(target, bytes, why);
    }

    // Null when the old file has to stay, and why.
    private static SavedFile? Replaced(SaveTarget target, byte[] bytes, DiskState expected, out string why)
    {
        why = "a new file there could not have its owner, access list and attributes";
        var beside = TemporaryName.New(target);
        try
        {
            using (var file = Durable.Create(beside, bytes.Length, target.Identity is null ? Everyone : OwnerOnly))
            {
                RandomAccess.Write(file.SafeFileHandle, bytes, 0);
                if (!TakesAfter(target, file, beside)) return null;
                Durable.Sync(file.SafeFileHandle);
            }

            RefuseOtherThan(SaveTarget.Of(target.Path) with { Name = target.Name }, expected);
            Durable.Replace(beside, target.Path);
        }
        catch (UnauthorizedAccessException) when (target.Identity is not null)
        {
            why = "its folder takes no new file";
            return null;
        }
        finally
        {
            File.Delete(beside);
        }

        return new(DiskState.Of(FileIdentity.Of(target.Path)!, bytes), Doubt(target));
    }

    // Owner first: giving a file away takes special modes from it. The mode last: it bounds what an access list gives.
    private static bool TakesAfter(SaveTarget target, FileStream file, string path)
    {
        if (target.Identity is not { } old || OperatingSystem.IsWindows()) return true;
        var made = FileIdentity.Of(path)!;
        if ((made.Owner, made.Group) != (old.Owner, old.Group) && !LibC.TryGive(file.SafeFileHandle, old.Owner, old.Group))
            return false;
        if (OperatingSystem.IsLinux() && !ExtendedAttributes.TryCopy(target.Path, path, file.SafeFileHandle)) return false;
        File.SetUnixFileMode(file.SafeFileHandle, old.Mode);
        return true;
    }

    // The new file is in its place; what may be missing is the disk's word that its name would outlive a power cut.
    private static string? Doubt(SaveTarget target)
    {
        try
        {
            Durable.SyncFolder(target.Folder);
            return null;
        }
        catch (IOException error)
        {
            return $"{target.Name} was saved, but the disk did not confirm it ({error.Message}); save again to be sure.";
        }
    }

    private static void RefuseOtherThan(SaveTarget target, DiskState expected)
    {
        var found = target.State();
        if (found.SameContent(expected)) return;
        throw new SaveRefused(FileFault.ChangedUnderneath, (found.Exists, expected.Exists) switch
        {
            (false, _) => $"{target.Name} has been deleted since it was read, and was not saved. Nothing on disk is changed.",
            (true, false) => $"{target.Name} exists already and was not overwritten. The file on disk is unchanged.",
            _ => $"{target.Name} has been changed by another program since it was read, and was not overwritten."
                + " The file on disk stays as that program left it.",
        });
    }
}
