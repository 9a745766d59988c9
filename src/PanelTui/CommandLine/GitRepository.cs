using System.Collections.Immutable;
using System.Text;

namespace PanelTui.CommandLine;

/// <summary>The repository of a folder, as far as `git-setup` reads and writes it.</summary>
/// <param name="Top">The folder of the work tree, links followed.</param>
/// <param name="Home">Where git keeps what belongs to this work tree.</param>
/// <param name="Common">Where git keeps what all work trees of the repository have in common: its
/// configuration.</param>
internal sealed record GitRepository(string Top, string Home, string Common)
{
    private const int NamesAskedAbout = 200;

    public string AttributesFile => Path.Combine(Top, ".gitattributes");

    /// <summary>Null when git cannot tell; then its answer says why.</summary>
    public static (GitRepository? Repository, GitAnswer Answer) Of(string folder)
    {
        var top = Git.Run(folder, "rev-parse", "--show-toplevel");
        if (!top.Succeeded) return (null, top);
        var home = Git.Run(folder, "rev-parse", "--absolute-git-dir");
        var common = Git.Run(folder, "rev-parse", "--git-common-dir");
        if (!home.Succeeded || !common.Succeeded) return (null, home.Succeeded ? common : home);
        return (new(top.Text, home.Text, Path.GetFullPath(common.Text, folder)), top);
    }

    /// <summary>
    /// A sentence when what git-setup writes would land outside the repository or through a link; else null.
    /// </summary>
    public string? WhyNotToWrite()
    {
        if (WhyNoAttributes() is { } why) return why;
        if (new FileInfo(Path.Combine(Common, "config")).LinkTarget is { } target)
            return $"{Path.Combine(Common, "config")} is a symbolic link to {target},"
                + " and git-setup follows none. Nothing was written.";
        return IsOwn() ? null : $"{Path.Combine(Top, ".git")} leads to {Common},"
            + " which does not name this folder as its own. Nothing was written.";
    }

    /// <summary>A sentence when .gitattributes cannot be read or written by git's rules; else null.</summary>
    public string? WhyNoAttributes()
    {
        if (new FileInfo(AttributesFile).LinkTarget is { } target)
            return $"{AttributesFile} is a symbolic link to {target}."
                + " Git does not follow it, and neither does git-setup. Put a file there instead.";
        return Directory.Exists(AttributesFile) ? $"{AttributesFile} is a folder. Put a file there instead." : null;
    }

    /// <summary>
    /// Git's own answer for the schedules it tracks, and for a new one at the top: what it would not merge or show by
    /// meaning.
    /// </summary>
    public ImmutableArray<string> Unattributed()
    {
        string[] tracked = [.. Parts(Git.Run(Top, "ls-files", "-z", "--", "*.panel.yaml")).Take(NamesAskedAbout)];
        var told = Parts(Git.Run(Top, ["check-attr", "-z", "merge", "diff", "--", "new.panel.yaml", .. tracked]));
        return
        [
            .. told.Chunk(3)
                .Where(row => row is [_, _, not "panel"])
                .Select(row => $"git does not use it for {row[0]}: the attribute {row[1]} is {row[2]}"),
        ];
    }

    private static string[] Parts(GitAnswer answer) =>
        Encoding.UTF8.GetString(answer.Out).Split('\0', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>
    /// In the work tree; of a linked work tree or a submodule: where git keeps those, with the way back written there.
    /// </summary>
    private bool IsOwn()
    {
        if (IsBelow(Top, Home) && IsBelow(Top, Common)) return true;
        var back = Path.Combine(Home, "gitdir");
        if (Path.GetDirectoryName(Home) == Path.Combine(Common, "worktrees"))
            return File.Exists(back)
                && Path.GetFullPath(File.ReadAllText(back).Trim(), Home) == Path.Combine(Top, ".git");
        var tree = Git.Run(Top, "config", "--file", Path.Combine(Home, "config"), "--get", "core.worktree");
        return Home == Common && tree.Succeeded && Path.GetFullPath(tree.Text, Home) == Top;
    }

    private static bool IsBelow(string folder, string path) =>
        path.StartsWith($"{folder.TrimEnd('/')}/", StringComparison.Ordinal);
}
