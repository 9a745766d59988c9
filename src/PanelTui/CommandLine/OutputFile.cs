using PanelTui.Documents.Files;

namespace PanelTui.CommandLine;

/// <summary>Writes what a verb makes into a file: never over another one unless told to, and never through a link.</summary>
internal static class OutputFile
{
    private const UnixFileMode Everyone = UnixFileMode.UserRead | UnixFileMode.UserWrite
        | UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.OtherRead | UnixFileMode.OtherWrite;

    /// <summary>Why a file was not written, in one sentence, and whether only because there is one of that name.</summary>
    public sealed record Problem(string Sentence, bool Exists);

    /// <summary>Nothing where it is written.</summary>
    public static Problem? Write(string path, byte[] bytes, bool force)
    {
        try
        {
            if (force) Replace(path, bytes);
            else Create(path, bytes);
            return null;
        }
        catch (IOException) when (!force && (File.Exists(path) || new FileInfo(path).LinkTarget is not null))
        {
            return new($"{path} exists already and was not overwritten.", true);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return new($"{path} was not written: {problem.Message}", false);
        }
    }

    private static void Create(string path, byte[] bytes)
    {
        using var file = Durable.Create(path, bytes.Length, Everyone);
        file.Write(bytes);
        Durable.Sync(file.SafeFileHandle);
    }

    /// <summary>Whole and in one step: a new file beside it takes its name, whatever the name pointed at.</summary>
    private static void Replace(string path, byte[] bytes)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var beside = Path.Combine(folder, $".{Path.GetRandomFileName()}.tmp");
        try
        {
            Create(beside, bytes);
            Durable.Replace(beside, path);
            Durable.SyncFolder(folder);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
