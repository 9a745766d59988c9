using PanelTui.Documents.Files;

namespace PanelTui.Documents.Recovery;

/// <summary>Where the reader of a schedule was when it was closed. A convenience: whatever goes wrong with it is no fault.</summary>
/// <param name="state">Where the program keeps such things.</param>
public sealed class LastPlace(StateFolder state)
{
    /// <summary>The longest place there is: a space, and half of it.</summary>
    private const int Longest = 8;

    /// <summary>The space as it is written in the file, e.g. `17a`; nothing where none was kept.</summary>
    public string? Of(string schedule)
    {
        try
        {
            return File.Exists(FileOf(schedule)) && File.ReadAllText(FileOf(schedule)).Trim() is { Length: > 0 and <= Longest } space ? space : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or FileProblem)
        {
            return null;
        }
    }

    public void Keep(string schedule, string space)
    {
        if (Of(schedule) == space) return;
        try
        {
            state.Make(state.PlacesFolder());
            File.WriteAllText(FileOf(schedule), space);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or FileProblem)
        {
            // The next start begins at space 1.
        }
    }

    private string FileOf(string schedule) => Path.Combine(state.PlacesFolder(), StateFolder.NameOf(schedule));
}
