using System.Text;

namespace PanelTui.Documents.Files;

/// <summary>Where the program keeps what it must remember between two runs; never beside a schedule, which lies in a git work tree.</summary>
/// <param name="Root">The folder; need not exist yet. Empty when there is none, see <see cref="Nowhere"/>.</param>
public sealed record StateFolder(string Root)
{
    /// <summary>No folder: nothing is kept, and whatever asks for a place gets a <see cref="FileProblem"/>.</summary>
    public static StateFolder Nowhere { get; } = new("");

    /// <summary>The state folder of the user who runs the program.</summary>
    public static StateFolder OfUser => Of(
        Environment.GetEnvironmentVariable("XDG_STATE_HOME"),
        Environment.GetFolderPath(Environment.SpecialFolder.UserProfile));

    /// <summary>
    /// `$XDG_STATE_HOME/paneltui`, else `~/.local/state/paneltui`, else nowhere. An empty or relative value is ignored:
    /// XDG Base
    /// Directory Specification 0.8, "Environment variables" and "Basics".
    /// </summary>
    /// <param name="stateHome">The value of XDG_STATE_HOME; null when it is not set.</param>
    /// <param name="home">The home folder; empty when it does not exist.</param>
    internal static StateFolder Of(string? stateHome, string home) =>
        Path.IsPathFullyQualified(stateHome ?? "") ? new(Path.Combine(stateHome!, "paneltui"))
        : Path.IsPathFullyQualified(home) ? new(Path.Combine(home, ".local", "state", "paneltui"))
        : Nowhere;

    /// <summary>Where unsaved work, locks and copies are.</summary>
    /// <exception cref="FileProblem">There is no state folder.</exception>
    public string RecoveryFolder() => Path.Combine(Root.Length > 0 ? Root : throw None(), "recovery");

    /// <summary>The folder for what belongs to one schedule, whatever links lead to it.</summary>
    /// <exception cref="FileProblem">The path can be no file, or there is no state folder.</exception>
    public string Of(string schedule) => Path.Combine(RecoveryFolder(), NameOf(schedule));

    /// <summary>Where the cursor was left, a small file a schedule.</summary>
    /// <exception cref="FileProblem">There is no state folder.</exception>
    public string PlacesFolder() => Path.Combine(Root.Length > 0 ? Root : throw None(), "places");

    /// <summary>The same name for one schedule, whatever links lead to it; it tells nothing of the path.</summary>
    internal static string NameOf(string schedule) =>
        Sha256.Hex(Encoding.UTF8.GetBytes(Real(SaveTarget.Of(schedule).Path)))[..32];

    // Every folder on the way may be a link, too; one that leads nowhere stays as it is written.
    private static string Real(string path)
    {
        if (Path.GetDirectoryName(path) is not { } above) return path;
        var folder = new DirectoryInfo(Real(above));
        var target = folder.LinkTarget is null ? null : folder.ResolveLinkTarget(returnFinalTarget: true);
        return Path.Combine(target is null ? folder.FullName : Real(target.FullName), Path.GetFileName(path));
    }

    /// <summary>Makes a folder below the root that nobody else can look into.</summary>
    /// <exception cref="FileProblem">Somebody else owns it or may write there.</exception>
    internal void Make(string folder)
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        else PrivateFolder.Make(Root, folder);
    }

    private static FileProblem None() => new(
        FileFault.NoSuchFolder,
        "Unsaved work cannot be kept: there is no home folder,"
            + " and XDG_STATE_HOME is not set to an absolute path. Save often.");
}
