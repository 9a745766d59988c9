using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Files;

/// <summary>
/// Reads schedules from disk and saves them so that there is always the whole old version or the whole new one.
/// </summary>
public static class ScheduleFile
{
    /// <summary>Reads a file.</summary>
    /// <exception cref="FileProblem">It cannot be read.</exception>
    /// <exception cref="YamlProblem">
    /// It was read but is not a text that a schedule may be; the message says where.
    /// </exception>
    public static LoadedFile Load(string path) => Reading(path, () =>
    {
        var target = SaveTarget.Of(path);
        if (target.Identity is not { } identity) throw new FileProblem(FileFault.NotFound, $"There is no file {path}.");
        if (identity.Size == 0 && KernelFile.Is(target.Path))
            throw new FileProblem(FileFault.NotAFile, $"{path} is a file that the system makes up when it is read, not a file on a disk.");
        if (identity.Size > TextLimits.Bytes) throw TooLarge(path);
        var bytes = File.ReadAllBytes(target.Path);
        if (bytes.Length > TextLimits.Bytes) throw TooLarge(path);
        var state = DiskState.Of(identity, bytes);
        var isReadOnly = identity.IsWriteProtected || !MayWrite(target.Path);
        return new LoadedFile(SourceText.FromBytes(bytes, path), state, isReadOnly);
    });

    /// <summary>
    /// Looks at what is on disk now, to compare it with what was read or saved; a missing file is a state, too.
    /// </summary>
    /// <exception cref="FileProblem">It cannot be looked at.</exception>
    public static DiskState Look(string path) => Reading(path, () => SaveTarget.Of(path).State());

    /// <summary>Saves a text, if the file on disk still is the expected one.</summary>
    /// <param name="path">Where. Symbolic links are followed and kept.</param>
    /// <param name="source">What.</param>
    /// <param name="expected">
    /// The state from reading or from the last save; <see cref="DiskState.Missing"/> for a new file.
    /// </param>
    /// <exception cref="SaveRefused">Nothing was saved; the sentence says why.</exception>
    public static SavedFile Save(string path, SourceText source, DiskState expected)
    {
        try
        {
            var target = SaveTarget.Of(path);
            var bytes = source.ToBytes();
            if (bytes.Length > TextLimits.Bytes) throw TooLarge(path);
            return SafeSave.Write(target, bytes, expected);
        }
        catch (FileProblem problem) when (problem is not SaveRefused)
        {
            throw Refused(path, problem.Fault, problem.Message, problem);
        }
        catch (Exception error) when (FaultReader.IsFileError(error))
        {
            var fault = FaultReader.FaultOf(error);
            throw Refused(path, fault, $"{path} cannot be saved: {FaultReader.Words(fault, error)}.", error);
        }
    }

    /// <summary>Removes the temporary files that killed saves have left beside a file; never throws for what the disk says.</summary>
    public static void Sweep(string path, TimeProvider clock)
    {
        try
        {
            TemporaryName.Sweep(SaveTarget.Of(path), clock);
        }
        catch (Exception error) when (error is FileProblem || FaultReader.IsFileError(error))
        {
            // They are in nobody's way: the next start tries again.
        }
    }

    private static bool MayWrite(string path) => !OperatingSystem.IsLinux() || LibC.MayWrite(path);

    private static T Reading<T>(string path, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception error) when (FaultReader.IsFileError(error))
        {
            var fault = FaultReader.FaultOf(error);
            throw new FileProblem(fault, $"{path} cannot be read: {FaultReader.Words(fault, error)}.", error);
        }
    }

    private static SaveRefused Refused(string path, FileFault fault, string sentence, Exception cause) =>
        new(fault, $"{sentence} {(File.Exists(path) ? "The file on disk is unchanged" : "Nothing on disk is changed")}.", cause);

    private static FileProblem TooLarge(string path) =>
        new(FileFault.TooLarge, $"{path} is larger than {TextLimits.Bytes / 1024 / 1024} MiB, which no schedule is.");
}
