namespace PanelTui.Documents.Files;

/// <summary>
/// A copy of a file's old version in the user's state folder, made before the file is written in place.
/// </summary>
internal static class SafetyCopy
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Writes the copy and waits for the disk; returns its path.</summary>
    /// <exception cref="FileProblem">There is nowhere to put it, so the file must not be touched.</exception>
    public static string Make(SaveTarget target, byte[] content)
    {
        try
        {
            StateFolder.Make(Folder);
            var path = Path.Combine(Folder, $"{Path.GetFileName(target.Path)}.{UniqueName.New()}.old");
            using var file = Durable.Create(path, content.Length, OwnerOnly);
            RandomAccess.Write(file.SafeFileHandle, content, 0);
            Durable.Sync(file.SafeFileHandle);
            return path;
        }
        catch (Exception error) when (FaultReader.IsFileError(error))
        {
            throw new FileProblem(
                FaultReader.FaultOf(error),
                $"{target.Name} can only be written in place, and there is no room for a copy of it in {Folder}.",
                error);
        }
    }

    private static string Folder => Path.Combine(StateFolder.OfUser.Root, "recovery");
}
