using System.Globalization;
using Microsoft.Win32.SafeHandles;
using PanelTui.Documents.Files;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Recovery;

/// <summary>
/// The unsaved work of one run on one schedule, kept on the disk from change to change. There is a file only as long as there is
/// such work. Not safe for several threads.
/// </summary>
/// <param name="state">Where journals are.</param>
/// <param name="clock">Tells when the work was kept; nothing is decided by it.</param>
public sealed class Journal(StateFolder state, TimeProvider clock) : IDisposable
{
    internal const string Ending = ".journal";
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private SafeFileHandle? _file;
    private string _path = "";
    private string _schedule = "";
    private SourceText? _onDisk;
    private string _kept = "";
    private long _length;

    /// <summary>How often something was written.</summary>
    public int Writes { get; private set; }

    /// <summary>How many bytes were written.</summary>
    public long Bytes { get; private set; }

    /// <summary>
    /// Keeps a text, and waits until it is on the disk; the one that is kept already costs nothing, and the one on disk is none to keep.
    /// </summary>
    /// <param name="schedule">The file that is edited.</param>
    /// <param name="onDisk">What it held when it was read or saved last.</param>
    /// <param name="text">What it would hold if it were saved now.</param>
    /// <param name="changes">How many steps of the user lie between the two.</param>
    /// <exception cref="FileProblem">It could not be kept; the sentence says why.</exception>
    public void Keep(string schedule, SourceText onDisk, string text, int changes)
    {
        try
        {
            if (text == onDisk.Text || schedule != _schedule || onDisk.Text != _onDisk?.Text) Clear();
            if (text == onDisk.Text || (_file is not null && text == _kept)) return;
            var head = _file is null ? Begin(schedule, onDisk) : [];
            Write([.. head, .. JournalLines.Entry(_kept, text, changes, clock.GetUtcNow())]);
            if (head.Length > 0) Durable.SyncFolder(Path.GetDirectoryName(_path)!);
            _kept = text;
        }
        catch (Exception error) when (FaultReader.IsFileError(error))
        {
            if (_length == 0) Clear(); // a file without a line is of no use
            var fault = FaultReader.FaultOf(error);
            throw new FileProblem(fault, $"Unsaved work cannot be kept in {state.Root}: {FaultReader.Words(fault, error)}. Save often.", error);
        }
    }

    /// <summary>There is no unsaved work any more.</summary>
    public void Clear()
    {
        _file?.Dispose();
        if (_file is not null) File.Delete(_path);
        (_file, _schedule, _onDisk) = (null, "", null);
    }

    /// <summary>Lets go of the file, which stays.</summary>
    public void Dispose() => _file?.Dispose();

    /// <summary>Makes the file; the line that goes before the first change.</summary>
    private byte[] Begin(string schedule, SourceText onDisk)
    {
        var folder = state.Of(schedule);
        state.Make(folder);
        _path = NextIn(folder);
        using (Durable.Create(_path, 0, OwnerOnly)) { } // made by nobody else, and readable by nobody else
        _file = File.OpenHandle(_path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete);
        (_length, _kept, _schedule, _onDisk) = (0, onDisk.Text, schedule, onDisk);
        return JournalLines.Head(Path.GetFullPath(schedule), onDisk, Owner.Here);
    }

    private void Write(byte[] line)
    {
        try
        {
            RandomAccess.Write(_file!, line, _length);
            Durable.Sync(_file!);
        }
        catch (IOException)
        {
            RandomAccess.SetLength(_file!, _length);
            throw;
        }

        _length += line.Length;
        (Writes, Bytes) = (Writes + 1, Bytes + line.Length);
    }

    /// <summary>Journals are numbered, for clocks jump: the highest number is the newest work.</summary>
    private static string NextIn(string folder)
    {
        var last = Directory.GetFiles(folder, $"*{Ending}").Select(NumberOf).DefaultIfEmpty(0).Max();
        return Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{last + 1}{Ending}"));
    }

    internal static int NumberOf(string path) =>
        int.TryParse(Path.GetFileNameWithoutExtension(path), CultureInfo.InvariantCulture, out var number) ? number : 0;
}
