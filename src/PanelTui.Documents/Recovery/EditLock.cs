using System.Text.Json;
using PanelTui.Documents.Files;

namespace PanelTui.Documents.Recovery;

/// <summary>Says that a schedule is open in an editor. It warns, and keeps nobody from anything: saving looks at the file itself.</summary>
public sealed class EditLock : IDisposable
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private readonly string _path;

    private EditLock(string path, Owner? other) => (_path, Other) = (path, other);

    /// <summary>Who else has the schedule open; then nothing was locked.</summary>
    public Owner? Other { get; }

    /// <summary>Locks a schedule, unless another run that may still go on has done so; a lock left by a dead one is taken over.</summary>
    /// <exception cref="FileProblem">The state folder cannot be written.</exception>
    public static EditLock Take(StateFolder state, string schedule)
    {
        try
        {
            var folder = state.Of(schedule);
            state.Make(folder);
            var path = Path.Combine(folder, "lock");
            if (!TryPut(path, isNew: true))
            {
                if (OwnerOf(path) is { MayGoOn: true } other && other != Owner.Here) return new(path, other);
                TryPut(path, isNew: false);
            }

            return new(path, OwnerOf(path) is { } now && now != Owner.Here ? now : null);
        }
        catch (Exception error) when (FaultReader.IsFileError(error))
        {
            var fault = FaultReader.FaultOf(error);
            throw new FileProblem(
                fault, $"Unsaved work cannot be kept in {state.Root}: {FaultReader.Words(fault, error)}. Save often.", error);
        }
    }

    /// <summary>Unlocks what was locked here.</summary>
    public void Dispose()
    {
        try
        {
            if (Other is not null || OwnerOf(_path) != Owner.Here) return;
            File.Delete(_path);
            var folder = Path.GetDirectoryName(_path)!;
            if (!Directory.EnumerateFileSystemEntries(folder).Any()) Directory.Delete(folder);
        }
        catch (Exception error) when (FaultReader.IsFileError(error))
        {
            // It tells of a run that has ended: the next one takes it over.
        }
    }

    /// <summary>The lock appears with its content, so that nobody can read half of it; false where there is one already.</summary>
    private static bool TryPut(string path, bool isNew)
    {
        var beside = $"{path}.{UniqueName.New()}";
        try
        {
            using (var file = Durable.Create(beside, 0, OwnerOnly))
            using (var json = new Utf8JsonWriter(file))
            {
                json.WriteStartObject();
                OwnerJson.Write(json, Owner.Here);
                json.WriteEndObject();
            }

            if (isNew && File.Exists(path)) return false;
            File.Move(beside, path, overwrite: !isNew);
            return true;
        }
        catch (IOException) when (isNew && File.Exists(path))
        {
            return false;
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private static Owner? OwnerOf(string path)
    {
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllText(path));
            return OwnerJson.Read(json.RootElement);
        }
        catch (Exception error) when (error is FileNotFoundException or JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return null;
        }
    }
}
