using System.CommandLine;
using PanelTui.Documents.Comparing;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui diff OLD NEW`: what changed, as facts about the panel.</summary>
internal sealed class DiffVerb : Verb
{
    private const int Differ = 1;

    public override string Name => "diff";

    public override string Summary => "what changed between two versions, as facts about the panel";

    public override string Page => """
        Compare two versions of a schedule: circuits added, removed, moved and changed,
        keys of the panel and what feeds it, the figures before and after, findings that
        came and went.

        Usage:
          paneltui diff OLD NEW [--json | --markdown]
          paneltui diff [REVISION [REVISION]] FILE [--json | --markdown]

        Examples:
          paneltui diff shed.panel.yaml shed-new.panel.yaml
          paneltui diff shed.panel.yaml                 with the last commit in git
          paneltui diff HEAD~3 shed.panel.yaml          with a revision of git
          paneltui diff v1 v2 shed.panel.yaml --markdown

        --textconv FILE prints a line for each fact, for git; `paneltui git-setup` sets
        that up.
        Exit codes, as those of diff: 0 the same, 1 they differ, 2 a version cannot be
        read.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var named = new Argument<string[]>("VERSION") { Arity = new ArgumentArity(1, 3), Description = "files, or revisions and then a file" };
        var json = new Option<bool>("--json") { Description = "one JSON object on standard output" };
        var markdown = new Option<bool>("--markdown") { Description = "for a review" };
        var textconv = new Option<bool>("--textconv") { Description = "one file, a line for each fact, for git" };
        command.Add(named);
        command.Add(json);
        command.Add(markdown);
        command.Add(textconv);
        command.SetAction(parsed => parsed.GetValue(textconv)
            ? Textconv(parsed.GetRequiredValue(named)[0], streams)
            : Compare(parsed.GetRequiredValue(named), parsed.GetValue(json) ? Json : parsed.GetValue(markdown) ? ChangeText.Markdown : ChangeText.Plain, streams));
    }

    private static int Compare(string[] named, Func<ScheduleChanges, IEnumerable<string>> print, Streams streams)
    {
        var (old, now) = VersionInput.Of(named, streams);
        if ((ProblemOf(old) ?? ProblemOf(now)) is { } problem) return streams.Refuse(problem);
        var changes = ScheduleChanges.Between(old.Snapshot!, now.Snapshot!);
        foreach (var line in print(changes)) streams.Out.WriteLine(line);
        return changes.AreNone ? ExitCode.Clean : Differ;
    }

    private static IEnumerable<string> Json(ScheduleChanges changes) => [ChangeJson.Of(changes)];

    private static string? ProblemOf(ScheduleInput input)
    {
        if (input.Problem is not null) return input.Problem;
        if (input.Snapshot is { HasErrors: false } or { Tree.Root: null }) return null;
        return CheckReport.Line(input.Name, input.Snapshot!, input.Snapshot!.Diagnostics.First(wrong => wrong.IsError));
    }

    // Git takes any other end than 0 for a failure of its own command, so a broken file is shown as it is.
    private static int Textconv(string file, Streams streams)
    {
        var input = ScheduleInput.Read(file, streams);
        if (input.Snapshot is { } snapshot)
        {
            foreach (var line in FactLines.Of(snapshot)) streams.Out.WriteLine(line);
        }
        else if (File.Exists(file))
        {
            streams.Out.Write(File.ReadAllText(file));
        }

        return ExitCode.Clean;
    }
}
