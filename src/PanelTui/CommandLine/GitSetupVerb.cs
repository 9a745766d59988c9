using System.CommandLine;

namespace PanelTui.CommandLine;

/// <summary>`paneltui git-setup`: has git merge and show schedules by what they say.</summary>
internal sealed class GitSetupVerb : Verb
{
    public override string Name => "git-setup";

    public override string Summary => "have git merge and show schedules by what they say";

    public override string Page => """
        Set up the git repository of this folder: one line in .gitattributes, to be
        committed, and settings of this clone for merge, diff, difftool and mergetool.
        Git then calls the paneltui on the path, else the copy that ran git-setup;
        whoever has neither gets git's own merge of lines.

        Usage:
          paneltui git-setup [--check]

        Examples:
          paneltui git-setup
          paneltui git-setup --check         say what is missing or does not run
          git difftool -t panel HEAD~3       then shows facts instead of lines

        Exit codes: 0 set up, 1 --check found something, 2 no repository, or git failed.
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
        if (!top.Succeeded) return streams.Refuse($"paneltui: this folder is in no git repository: {top.Error}");
        if (onlyCheck) return Check(top.Text, streams);
        if (streams.WritesNothing) return streams.WouldWrite($"{Path.Combine(top.Text, ".gitattributes")} and settings of this clone");
        return SetUp(top.Text, streams);
    }

    private static int Check(string top, Streams streams)
    {
        string[] missing =
        [
            .. HasAttributes(top) ? [] : new[] { $"missing: .gitattributes: {GitSettings.Attributes}" },
            .. GitSettings.All.Where(setting => !IsSet(top, setting.Key, setting.Value)).Select(setting => $"missing or different: git config {setting.Key}"),
            .. Broken(top),
        ];
        foreach (var line in missing) streams.Out.WriteLine(line);
        streams.Out.WriteLine(missing.Length == 0 ? "git merges and shows schedules by what they say." : "`paneltui git-setup` sets it up.");
        return missing.Length == 0 ? ExitCode.Clean : ExitCode.Findings;
    }

    private static bool IsSet(string top, string key, string value) => Git.Run(top, "config", "--get", key).Text == value;

    /// <summary>What is set up and does not run: the program was moved, is on no path, or is another one.</summary>
    private static IEnumerable<string> Broken(string top)
    {
        if (Git.Run(top, "config", "--get", GitSettings.Driver) is { Succeeded: true } driver && !GitTrial.MergesByMeaning(driver.Text))
            yield return $"does not run: git config {GitSettings.Driver}; git merges lines instead";
        if (Git.Run(top, "config", "--get", GitSettings.Textconv) is { Succeeded: true } textconv && !GitTrial.ShowsFacts(textconv.Text))
            yield return $"does not run: git config {GitSettings.Textconv}; git shows lines instead";
    }

    private static int SetUp(string top, Streams streams)
    {
        foreach (var (key, value) in GitSettings.All)
        {
            if (Git.Run(top, "config", key, value) is not { Succeeded: false } failed) continue;
            return streams.Refuse($"paneltui: git config {key} failed: {failed.Error}");
        }

        if (!HasAttributes(top)) AddAttributes(Path.Combine(top, ".gitattributes"));
        streams.Out.WriteLine("git merges and shows schedules by what they say in this clone. Commit .gitattributes; each clone runs git-setup once.");
        return ExitCode.Clean;
    }

    private static bool HasAttributes(string top) =>
        Path.Combine(top, ".gitattributes") is var path && File.Exists(path) && File.ReadLines(path).Any(line => line.Trim() == GitSettings.Attributes);

    private static void AddAttributes(string path)
    {
        var old = File.Exists(path) ? File.ReadAllText(path) : "";
        var gap = old.Length == 0 || old.EndsWith('\n') ? "" : "\n";
        File.AppendAllText(path, $"{gap}{GitSettings.Attributes}\n");
    }
}
