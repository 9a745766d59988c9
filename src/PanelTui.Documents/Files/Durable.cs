using Microsoft.Win32.SafeHandles;

namespace PanelTui.Documents.Files;

/// <summary>The steps of a save that must be sure, on each system by the surest call it has.</summary>
public static class Durable
{
    // What .NET gives, among other things, when the space asked for in advance is not there.
    private const int PreallocationFailed = unchecked((int)0x80131620);

    /// <summary>Waits until the bytes are on the disk.</summary>
    /// <exception cref="IOException">They are not.</exception>
    public static void Sync(SafeFileHandle file)
    {
        if (OperatingSystem.IsWindows()) RandomAccess.FlushToDisk(file);
        else LibC.Sync(file);
    }

    /// <summary>Waits until the names in a folder are on the disk; on Windows the rename itself does that.</summary>
    public static void SyncFolder(string folder)
    {
        if (!OperatingSystem.IsWindows()) LibC.SyncFolder(folder);
    }

    /// <summary>Puts one file in the place of another: readers see the old or the new one, whole.</summary>
    public static void Replace(string from, string to)
    {
        if (OperatingSystem.IsWindows()) File.Move(from, to, overwrite: true);
        else LibC.Rename(from, to);
    }

    /// <summary>A new file that no one else can have made, followed a link to, or be able to read.</summary>
    /// <param name="path">Where; must not exist.</param>
    /// <param name="bytes">
    /// How large it will become: the space is taken first, so that a full disk shows at once.
    /// </param>
    /// <param name="mode">Who may read and write it, the user's mask applied.</param>
    public static FileStream Create(string path, long bytes, UnixFileMode mode)
    {
        var options = new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.Write,
            Share = FileShare.None,
            BufferSize = 0,
            PreallocationSize = bytes,
        };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = mode;
            LibC.OutliveSizeLimit();
        }

        try
        {
            return new(path, options);
        }
        catch (IOException error) when (error.HResult == PreallocationFailed)
        {
            throw new IOException(error.Message, FaultReader.NoSpace);
        }
    }
}
