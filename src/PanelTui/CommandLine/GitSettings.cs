using System.Collections.Immutable;

namespace PanelTui.CommandLine;

/// <summary>What a clone's git is told of schedules: to call `paneltui` from the path, else the copy that set it up, else to do without.</summary>
internal static class GitSettings
{
    public const string Attributes = "*.panel.yaml merge=panel diff=panel";

    public const string Driver = "merge.panel.driver";

    public const string Textconv = "diff.panel.textconv";

    public static ImmutableArray<(string Key, string Value)> All { get; } =
    [
        ("merge.panel.name", "schedule merge by meaning"),
        (Driver, Calling("merge --marker-size %L --path %P %O %A %B", "git merge-file --marker-size=%L -L ours -L base -L theirs %A %O %B")),
        ("merge.panel.recursive", "binary"),
        (Textconv, $"f() {{ {Calling("diff --textconv \"$1\"", "cat \"$1\"")} || cat \"$1\"; }}; f"),
        ("diff.panel.xfuncname", "^ *- (id|space): .*$"),
        ("difftool.panel.cmd", Calling("diff \"$LOCAL\" \"$REMOTE\"", "git --no-pager diff --no-index \"$LOCAL\" \"$REMOTE\"")),
        ("mergetool.panel.cmd", Calling("merge \"$BASE\" \"$LOCAL\" \"$REMOTE\" -o \"$MERGED\"", "false")),
        ("mergetool.panel.trustExitCode", "true"),
    ];

    /// <summary>This program as words of a shell, and the file that has to be there for it.</summary>
    private static (string Words, string File) OwnCopy
    {
        get
        {
            var (program, assembly) = (Environment.ProcessPath ?? "paneltui", Environment.GetCommandLineArgs()[0]);
            return Path.GetFileNameWithoutExtension(program) == "dotnet" && Path.GetExtension(assembly) == ".dll"
                ? ($"{Quoted(program)} {Quoted(Path.GetFullPath(assembly))}", Quoted(Path.GetFullPath(assembly)))
                : (Quoted(program), Quoted(program));
        }
    }

    private static string Calling(string arguments, string otherwise) =>
        $"if command -v paneltui >/dev/null 2>&1; then paneltui {arguments}; elif [ -e {OwnCopy.File} ]; then {OwnCopy.Words} {arguments}; else {otherwise}; fi";

    private static string Quoted(string word) => $"'{word.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
