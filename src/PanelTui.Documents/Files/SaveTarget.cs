namespace PanelTui.Documents.Files;

/// <summary>The file that a save will replace: symbolic links followed, kind and protection checked.</summary>
/// <param name="Name">The path as the user gave it, for messages.</param>
/// <param name="Path">The real file's full path.</param>
/// <param name="Identity">The file there; null where there is none yet.</param>
internal sealed record SaveTarget(string Name, string Path, FileIdentity? Identity)
{
    public string Folder => System.IO.Path.GetDirectoryName(Path) ?? Path;

    /// <exception cref="FileProblem">Not a regular file, or links in a circle.</exception>
    public static SaveTarget Of(string name)
    {
        var path = Follow(System.IO.Path.GetFullPath(name));
        var identity = FileIdentity.Of(path);
        if (identity is { IsRegular: false })
            throw new FileProblem(FileFault.NotAFile, $"{name} is {(Directory.Exists(path) ? "a folder" : "a pipe or a device")}, not a file.");
        return new(name, path, identity);
    }

    /// <summary>What is there now.</summary>
    public DiskState State() => Identity is null ? DiskState.Missing : DiskState.Of(Identity, File.ReadAllBytes(Path));

    private static string Follow(string path)
    {
        if (new FileInfo(path) is not { LinkTarget: not null } link) return path;
        try
        {
            return link.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? path;
        }
        catch (IOException error) when (FaultReader.FaultOf(error) is FileFault.Other or FileFault.LinkLoop)
        {
            throw new FileProblem(FileFault.LinkLoop, $"{path} is a symbolic link that leads in a circle.", error);
        }
    }
}
