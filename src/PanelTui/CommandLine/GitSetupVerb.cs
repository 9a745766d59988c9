using System.Collections.Immutable;
using System.CommandLine;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui git-setup`: has git merge and show schedules by what they say.</summary>
internal sealed class GitSetupVerb : Verb
{
    private const string Attributes = "*.panel.yaml merge=panel diff=panel";

    private static readonly ImmutableArray<(string Key, string Value)> Settings =
    [
        ("merge.panel.name", "schedule merge by meaning"),
        ("merge.panel.driver", "if command -v paneltui >/dev/null 2>&1; then paneltui merge --marker-size %L --path %P %O %A %B; "
            + "else git merge-file --marker-size=%L -L ours -L base -L theirs %A %O %B; fi"),
        ("merge.panel.recursive", "binary"),
        ("diff.panel.textconv", "paneltui diff --textconv"),
        ("diff.panel.xfuncname", "^ *- (id|space): .*$"),
        ("difftool.panel.cmd", "paneltui diff \"$LOCAL\" \"$REMOTE\""),
        ("mergetool.panel.cmd", "paneltui merge \"$BASE\" \"$LOCAL\" \"$REMOTE\" -o \"$MERGED\""),
        ("mergetool.panel.trustExitCode", "true"),
    ];

    public override string Name => "git-setup";

    public override string Summary => "have git merge and show schedules by what they say";

    public override string Page => """
        Set up the git repository of this folder: one line in .gitattributes, to be
        committed, and settings of this clone for merge, diff, difftool and mergetool.
        Whoever has no paneltui gets git's own merge of lines.

        Usage:
          paneltui git-setup [--check]

        Examples:
          paneltui git-setup
          paneltui git-setup --check         say what is missing, change nothing
          git difftool -t panel HEAD~3       then shows facts instead of lines

        Exit codes: 0 set up, 1 --check found something missing, 2 no repository, or git
        failed.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var check = new Option<bool>("--check") { Description = "say what is missing, change nothing" };
        command.Add(check);
        command.SetAction(parsed => Run(Directory.GetCurrentDirectory(), parsed.GetValue(check), streams));
    }

    internal static int Run(string folder, bool onlyCheck, Streams streams)
    {
        var top = Git.Run(folder, "rev-parse", "--show-toplevel");
        if (!top.Succeeded)
        {
            streams.Error.WriteLine(DisplayText.Clean($"paneltui: this folder is in no git repository: {top.Error}"));
            return ExitCode.Unusable;
        }

        if (streams.WritesNothing) return streams.WouldWrite($"{Path.Combine(top.Text, ".gitattributes")} and settings of this clone");
        return onlyCheck ? Check(top.Text, streams) : SetUp(top.Text, streams);
    }

    private static int Check(string top, Streams streams)
    {
        string[] missing =
        [
            .. HasAttributes(top) ? [] : new[] { $".gitattributes: {Attributes}" },
            .. Settings.Where(setting => Git.Run(top, "config", "--get", setting.Key).Text != setting.Value).Select(setting => $"git config {setting.Key}"),
        ];
        foreach (var line in missing) streams.Out.WriteLine($"missing or different: {line}");
        streams.Out.WriteLine(missing.Length == 0 ? "git merges and shows schedules by what they say." : "`paneltui git-setup` sets it up.");
        return missing.Length == 0 ? ExitCode.Clean : ExitCode.Findings;
    }

    private static int SetUp(string top, Streams streams)
    {
        foreach (var (key, value) in Settings)
        {
            if (Git.Run(top, "config", key, value) is not { Succeeded: false } failed) continue;
            streams.Error.WriteLine(DisplayText.Clean($"paneltui: git config {key} failed: {failed.Error}"));
            return ExitCode.Unusable;
        }

        if (!HasAttributes(top)) AddAttributes(Path.Combine(top, ".gitattributes"));
        streams.Out.WriteLine("git merges and shows schedules by what they say in this clone. Commit .gitattributes; each clone runs git-setup once.");
        return ExitCode.Clean;
    }

    private static bool HasAttributes(string top) =>
        Path.Combine(top, ".gitattributes") is var path && File.Exists(path) && File.ReadLines(path).Any(line => line.Trim() == Attributes);

    private static void AddAttributes(string path)
    {
        var old = File.Exists(path) ? File.ReadAllText(path) : "";
        var gap = old.Length == 0 || old.EndsWith('\n') ? "" : "\n";
        File.AppendAllText(path, $"{gap}{Attributes}\n");
    }
}
