namespace PanelTui.CommandLine;

/// <summary>Writes what a verb makes into a file: never over another one unless told to, and never through a link.</summary>
internal static class OutputFile
{
    /// <summary>Nothing where it is written, else one line that says why not.</summary>
    public static string? Write(string path, byte[] bytes, bool force)
    {
        try
        {
            if (force) Replace(path, bytes);
            else Create(path, bytes);
            return null;
        }
        catch (IOException) when (!force && (File.Exists(path) || new FileInfo(path).LinkTarget is not null))
        {
            return $"{path} exists already and was not overwritten; --force overwrites it.";
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return $"{path} was not written: {problem.Message}";
        }
    }

    private static void Create(string path, byte[] bytes)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        file.Write(bytes);
    }

    /// <summary>Whole and in one step: a new file beside it takes its name, whatever the name pointed at.</summary>
    private static void Replace(string path, byte[] bytes)
    {
        var beside = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, $".{Path.GetRandomFileName()}.tmp");
        try
        {
            Create(beside, bytes);
            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
