using Microsoft.Win32.SafeHandles;
using PanelTui.Documents.Files;

namespace PanelTui.Documents.Recovery;

/// <summary>
/// Says on the schedule's own file that it is open in an editor: it is seen by editors of other users, with other
/// homes, and
/// through other names of the file, where <see cref="EditLock"/> is not.
/// </summary>
/// <remarks>
/// The place of the locked byte is the number of the process. On a file system without such locks nothing is marked and
/// nobody is
/// seen.
/// </remarks>
public sealed class OpenMark : IDisposable
{
    private const long FirstPlace = 1L << 40;

    /// <summary>More than any number of a process: proc(5), `pid_max`.</summary>
    private const long Places = 1L << 32;

    private readonly SafeFileHandle? _file;
    private readonly (ulong Device, ulong Inode) _which;

    private OpenMark(SafeFileHandle? file, (ulong Device, ulong Inode) which, Owner? other) =>
        (_file, _which, Other) = (file, which, other);

    /// <summary>Who else has the file open; null when nobody is seen. Then nothing is marked.</summary>
    public Owner? Other { get; }

    /// <summary>Marks a file, unless somebody else has; never fails.</summary>
    public static OpenMark Take(string schedule)
    {
        try
        {
            var path = SaveTarget.Of(schedule).Path;
            return OperatingSystem.IsLinux() && ByteLock.IsKnownHere
                && FileIdentity.Of(path) is { IsRegular: true } found
                ? Marked(path, (found.Device, found.Inode))
                : new(null, default, null);
        }
        catch (Exception error) when (error is FileProblem || FaultReader.IsFileError(error))
        {
            return new(null, default, null);
        }
    }

    /// <summary>
    /// The mark on the file that now has the name, after a save or another program put a new one there; this one where
    /// it is the same.
    /// </summary>
    public OpenMark On(string schedule)
    {
        if (_file is null || IsOf(schedule)) return this;
        var next = Take(schedule);
        Dispose();
        return next;
    }

    public void Dispose() => _file?.Dispose();

    [System.Runtime.Versioning.SupportedOSPlatform("linux")]
    private static OpenMark Marked(string path, (ulong, ulong) which)
    {
        SafeFileHandle? file = null;
        try
        {
            file = LibC.OpenToRead(path);
            if (file.IsInvalid || !ByteLock.TryShare(file, FirstPlace + Environment.ProcessId))
                return new(null, default, null);
            // Marked first and asked then: of two editors that start at once, at least one sees the other.
            if (ByteLock.FirstOfOthers(file, FirstPlace, Places) is { } place)
                return new(null, default, Owner.Of((int)(place - FirstPlace)));
            var mark = new OpenMark(file, which, null);
            file = null;
            return mark;
        }
        finally
        {
            file?.Dispose();
        }
    }

    private bool IsOf(string schedule)
    {
        try
        {
            return FileIdentity.Of(SaveTarget.Of(schedule).Path) is not { } found
                || (found.Device, found.Inode) == _which;
        }
        catch (Exception error) when (error is FileProblem || FaultReader.IsFileError(error))
        {
            return true;
        }
    }
}
