namespace PanelTui.Documents.Files;

/// <summary>
/// Calls when a file may have been written, replaced or removed, as the system tells it; between two calls nothing
/// runs.
/// </summary>
/// <remarks>
/// It watches the folder, so that a new file of the same name is seen. A network folder tells nothing of other
/// machines, and a
/// change through another name of the file in another folder is not seen either.
/// </remarks>
public sealed class FileWatch : IDisposable
{
    private readonly List<FileSystemWatcher> _folders = [];

    private FileWatch()
    {
    }

    /// <summary>
    /// Watches a file, and the link that leads to it; null when the system has no watcher left or the folder is gone.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="changed">Called on a thread of the system's.</param>
    public static FileWatch? Of(string path, Action changed)
    {
        var watch = new FileWatch();
        try
        {
            string[] files = [Path.GetFullPath(path), SaveTarget.Of(path).Path];
            foreach (var file in files.Distinct(StringComparer.Ordinal)) watch.Add(file, changed);
            return watch;
        }
        catch (Exception error) when (error is FileProblem || FaultReader.IsFileError(error))
        {
            watch.Dispose();
            return null;
        }
    }

    public void Dispose()
    {
        foreach (var folder in _folders) folder.Dispose();
    }

    private void Add(string file, Action changed)
    {
        var name = Path.GetFileName(file);
        var folder = new FileSystemWatcher(Path.GetDirectoryName(file)!)
        {
            NotifyFilter = NotifyFilters.FileName | NotifyFilters.LastWrite | NotifyFilters.Size,
        };
        _folders.Add(folder);
        folder.Changed += Look;
        folder.Created += Look;
        folder.Deleted += Look;
        folder.Renamed += (_, renamed) =>
        {
            if (renamed.Name == name || renamed.OldName == name) changed();
        };
        folder.Error += (_, _) => changed(); // more happened than the system could list
        folder.EnableRaisingEvents = true;

        void Look(object watcher, FileSystemEventArgs happened)
        {
            if (happened.Name == name) changed();
        }
    }
}
