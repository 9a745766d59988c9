using System.CommandLine;
using System.Text;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui git-setup`: has git merge and show schedules by what they say.</summary>
internal sealed class GitSetupVerb : Verb
{
    public override string Name => "git-setup";

    public override string Summary => "have git merge and show schedules by what they say";

    protected override bool Writes => true;

    public override string Page => """
        Set up the git repository of this folder: one line in .gitattributes, to be
        committed, and settings of this clone for merge, diff, difftool and mergetool.
        Git then calls the paneltui on the path, else the copy that ran git-setup;
        whoever has neither gets git's own merge of lines.

        Usage:
          paneltui git-setup [--check | --dry-run] [--json]

        Examples:
          paneltui git-setup
          paneltui git-setup --check         ask git, and try a merge
          git difftool -t panel HEAD~3       then shows facts instead of lines

        Exit codes: 0 set up, 1 --check found something, 2 no repository, or git failed.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var check = new Option<bool>("--check") { Description = "say what is missing, change nothing" };
        var json = JsonOption();
        command.Add(check);
        command.Add(json);
        command.SetAction(parsed => parsed.GetValue(check) && streams.WritesNothing
            ? Misuse(streams, "'--check' writes nothing, so '--dry-run' does not go with it")
            : Run(Directory.GetCurrentDirectory(), parsed.GetValue(check), streams, parsed.GetValue(json)));
    }

    internal static int Run(string folder, bool onlyCheck, Streams streams, bool asJson = false)
    {
        var (found, answer) = GitRepository.Of(folder);
        if (found is not { } repository)
            return streams.Refuse($"this folder is in no git repository: {answer.Error}");
        if (onlyCheck) return Check(repository, streams, asJson);
        if (repository.WhyNotToWrite() is { } why) return streams.Refuse(why);
        if (streams.WritesNothing && asJson) return Report([.. Missing(repository)], changed: false, streams);
        if (streams.WritesNothing) return streams.WouldWrite($"{repository.AttributesFile} and settings of this clone");
        return SetUp(repository, streams, asJson);
    }

    private static IEnumerable<string> Missing(GitRepository repository)
    {
        var different = Different(repository.Top).ToHashSet();
        return
        [
            .. repository.WhyNoAttributes() is { } why ? [why]
                : HasAttributes(repository) ? [] : new[] { $"missing: .gitattributes: {GitSettings.Attributes}" },
            .. repository.Unattributed(),
            .. different.Select(key => $"missing or different: git config {key}"),
            .. Broken(different),
        ];
    }

    private static int Report(string[] problems, bool changed, Streams streams)
    {
        streams.Out.WriteLine(JsonOutput.GitSetup.Of(json =>
        {
            json.WriteBoolean("ok", problems.Length == 0);
            json.WriteBoolean("changed", changed);
            json.WriteStrings("problems", problems);
        }));
        return ExitCode.Clean;
    }

    private static int Check(GitRepository repository, Streams streams, bool asJson)
    {
        string[] missing = [.. Missing(repository)];
        if (asJson)
        {
            Report(missing, changed: false, streams);
            return missing.Length == 0 ? ExitCode.Clean : ExitCode.Findings;
        }

        foreach (var line in missing) streams.Out.WriteLine(DisplayText.Clean(line));
        streams.Out.WriteLine(missing.Length == 0
            ? "git merges and shows schedules by what they say: a trial merge came out right."
            : "`paneltui git-setup` sets it up.");
        return missing.Length == 0 ? ExitCode.Clean : ExitCode.Findings;
    }

    private static IEnumerable<string> Different(string top) =>
        GitSettings.All
            .Where(setting => Git.Run(top, "config", "--get", setting.Key).Text != setting.Value)
            .Select(setting => setting.Key);

    /// <summary>
    /// What is set up and does not run: the program was moved, is on no path, or is another one. Only the texts that
    /// git-setup
    /// writes are tried: another one came from elsewhere and is reported as different.
    /// </summary>
    private static IEnumerable<string> Broken(HashSet<string> different)
    {
        if (different.Contains(GitSettings.Driver) && different.Contains(GitSettings.Textconv)) yield break;
        var trial = GitTrial.Run();
        if (!trial.Merges && !different.Contains(GitSettings.Driver))
            yield return $"does not run: git config {GitSettings.Driver}; git merges lines instead";
        if (!trial.Shows && !different.Contains(GitSettings.Textconv))
            yield return $"does not run: git config {GitSettings.Textconv}; git shows lines instead";
    }

    private static int SetUp(GitRepository repository, Streams streams, bool asJson)
    {
        foreach (var (key, value) in GitSettings.All)
        {
            if (Git.Run(repository.Top, "config", key, value) is not { Succeeded: false } failed) continue;
            return streams.Refuse($"git config {key} failed: {failed.Error}");
        }

        if (!HasAttributes(repository) && AddAttributes(repository.AttributesFile) is { } problem)
            return streams.Refuse(problem.Sentence);
        if (asJson) return Report([], changed: true, streams);
        streams.Out.WriteLine("git merges and shows schedules by what they say in this clone. Commit .gitattributes; each clone runs git-setup once.");
        return ExitCode.Clean;
    }

    private static bool HasAttributes(GitRepository repository) =>
        File.Exists(repository.AttributesFile)
        && File.ReadLines(repository.AttributesFile).Any(line => line.Trim() == GitSettings.Attributes);

    /// <summary>
    /// A new file takes the place of the old one, so that a link put there meanwhile is not followed.
    /// </summary>
    private static OutputFile.Problem? AddAttributes(string path)
    {
        var old = File.Exists(path) ? File.ReadAllBytes(path) : [];
        var gap = old.Length == 0 || old[^1] == '\n' ? "" : "\n";
        var line = Encoding.UTF8.GetBytes($"{gap}{GitSettings.Attributes}\n");
        return OutputFile.Write(path, [.. old, .. line], force: true);
    }
}
