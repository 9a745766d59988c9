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
        var state = StateFolder.OfUser;
        try
        {
            state.Make(state.RecoveryFolder());
            var path = Path.Combine(state.RecoveryFolder(), $"{Path.GetFileName(target.Path)}.{UniqueName.New()}.old");
            using var file = Durable.Create(path, content.Length, OwnerOnly);
            RandomAccess.Write(file.SafeFileHandle, content, 0);
            Durable.Sync(file.SafeFileHandle);
            return path;
        }
        catch (FileProblem problem)
        {
            throw Refused(target, problem.Fault, "no copy of it can be kept meanwhile", problem);
        }
        catch (Exception error) when (FaultReader.IsFileError(error))
        {
            throw Refused(
                target, FaultReader.FaultOf(error), $"there is no room for a copy of it in {state.RecoveryFolder()}", error);
        }
    }

    private static FileProblem Refused(SaveTarget target, FileFault fault, string why, Exception cause) =>
        new(fault, $"{target.Name} can only be written in place, and {why}.", cause);
}
