namespace PanelTui.CommandLine;

/// <summary>What a git command printed and how it ended; 127 when there is no git.</summary>
internal sealed record GitAnswer(int Code, byte[] Out, string Error)
{
    public bool Succeeded => Code == 0;

    public string Text => System.Text.Encoding.UTF8.GetString(Out).TrimEnd('\n');
}

/// <summary>The git that is installed, run without a terminal and without anything a repository or a variable has it run.</summary>
/// <remarks>
/// A repository's configuration names programs: for the state of its files, before and after commands, to show a file, to
/// page, to reach a server. Values on the command line win over every file, also over an included one. The commands
/// used here are the plain ones that apply no filter and no `textconv`. A repository of another owner gives no answer:
/// git refuses it by itself.
/// </remarks>
internal static class Git
{
    private static readonly string[] NothingConfigured =
    [
        "--no-pager", "--no-optional-locks", "-c", "core.fsmonitor=false", "-c", "core.hooksPath=/dev/null",
        "-c", "core.pager=cat", "-c", "core.sshCommand=false", "-c", "core.askPass=", "-c", "core.gitProxy=",
        "-c", "core.editor=false", "-c", "credential.helper=", "-c", "diff.external=", "-c", "log.showSignature=false",
        "-c", "gpg.program=false", "-c", "protocol.allow=never",
    ];

    /// <summary>Variables that only say where a repository or the user's own configuration is.</summary>
    private static readonly HashSet<string> Places =
    [
        "GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE", "GIT_COMMON_DIR", "GIT_OBJECT_DIRECTORY",
        "GIT_ALTERNATE_OBJECT_DIRECTORIES", "GIT_CEILING_DIRECTORIES", "GIT_DISCOVERY_ACROSS_FILESYSTEM",
        "GIT_CONFIG_GLOBAL", "GIT_CONFIG_SYSTEM", "GIT_CONFIG_NOSYSTEM",
    ];

    /// <summary>A partial clone fetches what it lacks, by any means the repository names; here it goes without.</summary>
    private static readonly Dictionary<string, string?> Quiet = new()
    {
        ["GIT_OPTIONAL_LOCKS"] = "0", ["GIT_NO_LAZY_FETCH"] = "1", ["GIT_ALLOW_PROTOCOL"] = "none",
        ["GIT_TERMINAL_PROMPT"] = "0", ["GIT_PROTOCOL_FROM_USER"] = "0", ["LC_ALL"] = "C.UTF-8", ["LANGUAGE"] = "",
    };

    public static GitAnswer Run(string folder, params string[] arguments)
    {
        var (code, output, error) = OutsideProgram.Run("git", folder, Variables(), [.. NothingConfigured, .. arguments]);
        return new GitAnswer(code, output, error);
    }

    /// <summary>A file as a revision has it, byte for byte.</summary>
    public static GitAnswer Show(string revision, string file)
    {
        var path = Path.GetFullPath(file);
        return revision.StartsWith('-')
            ? new GitAnswer(OutsideProgram.NotFound, [], "a revision does not begin with a dash")
            : Run(Path.GetDirectoryName(path)!, "cat-file", "blob", $"{revision}:./{Path.GetFileName(path)}");
    }

    private static IEnumerable<KeyValuePair<string, string?>> Variables() => Environment.GetEnvironmentVariables().Keys
        .Cast<string>()
        .Where(name => name.StartsWith("GIT_", StringComparison.Ordinal) && !Places.Contains(name))
        .Select(name => KeyValuePair.Create(name, (string?)null))
        .Concat(Quiet);
}
