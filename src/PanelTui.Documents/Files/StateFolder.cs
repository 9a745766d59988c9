using System.Text;

namespace PanelTui.Documents.Files;

/// <summary>Where the program keeps what it must remember between two runs; never beside a schedule, which lies in a git work tree.</summary>
/// <param name="Root">The folder; need not exist yet.</param>
public sealed record StateFolder(string Root)
{
    private const UnixFileMode OwnerAlone = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <summary>
    /// `$XDG_STATE_HOME/paneltui`, else `~/.local/state/paneltui`; a relative value does not count, as the XDG base directory
    /// specification says.
    /// </summary>
    public static StateFolder OfUser
    {
        get
        {
            var state = Environment.GetEnvironmentVariable("XDG_STATE_HOME");
            if (string.IsNullOrEmpty(state) || !Path.IsPathRooted(state))
                state = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".local", "state");
            return new(Path.Combine(state, "paneltui"));
        }
    }

    /// <summary>The folder for what belongs to one schedule, whatever links lead to it.</summary>
    /// <exception cref="FileProblem">The path can be no file.</exception>
    public string Of(string schedule) => Path.Combine(Root, "recovery", NameOf(schedule));

    /// <summary>Where the cursor was left, a small file a schedule.</summary>
    public string Places => Path.Combine(Root, "places");

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

    /// <summary>Makes a folder that nobody else can look into.</summary>
    internal static void Make(string folder)
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        else Directory.CreateDirectory(folder, OwnerAlone);
    }
}
