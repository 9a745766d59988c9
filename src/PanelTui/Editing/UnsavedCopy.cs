using System.Globalization;
using PanelTui.Documents.Files;
using PanelTui.Terminal;

namespace PanelTui.Editing;

/// <summary>Keeps unsaved work when something else than the user ends the program: a copy in the state folder, never beside the schedule.</summary>
internal static class UnsavedCopy
{
    private const UnixFileMode OwnerAlone = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <summary>A user who quits has been asked; everything else keeps what was not saved and says where.</summary>
    public static void Keep(Session session, Ending ending)
    {
        if (ending.Cause == EndingCause.Quit || session.IsSaved) return;
        var copy = Path.Combine(Folder(), string.Create(
            CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyyMMdd-HHmmss}-{Environment.ProcessId}-{Path.GetFileName(session.Path)}"));
        try
        {
            if (!OperatingSystem.IsWindows()) Directory.CreateDirectory(Folder(), OwnerAlone);
            ScheduleFile.Save(copy, session.Now.Source, DiskState.Missing);
            ending.Note = $"The changes that were not saved are in {copy}";
        }
        catch (Exception problem) when (problem is FileProblem or IOException or UnauthorizedAccessException)
        {
            ending.Note = $"The changes could not be kept: {problem.Message}";
        }
    }

    /// <summary>`$XDG_STATE_HOME/paneltui/unsaved`; a relative value does not count, as the XDG base directory specification says.</summary>
    internal static string Folder()
    {
        var state = Environment.GetEnvironmentVariable("XDG_STATE_HOME");
        var root = state is { Length: > 0 } && Path.IsPathRooted(state)
            ? state
            : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".local", "state");
        return Path.Combine(root, "paneltui", "unsaved");
    }
}
