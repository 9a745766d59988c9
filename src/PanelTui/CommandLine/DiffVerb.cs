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
          paneltui diff OLD NEW [--json | --markdown | --quiet] [--color WHEN]
          paneltui diff [REVISION [REVISION]] FILE [the same options]

        Examples:
          paneltui diff shed.panel.yaml shed-new.panel.yaml
          paneltui diff shed.panel.yaml                 with the last commit in git
          paneltui diff HEAD~3 shed.panel.yaml          with a revision of git
          paneltui diff v1 v2 shed.panel.yaml --markdown

        --quiet prints nothing: the exit code tells. --color is auto (on a terminal,
        unless NO_COLOR is set), always or never. docs/json.md tells about --json.
        --textconv FILE prints a line for each fact, for git; `paneltui git-setup` sets
        that up.
        Exit codes, as those of diff: 0 the same, 1 they differ, 2 a version cannot be
        read.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var named = new Argument<string[]>("VERSION") { Arity = new ArgumentArity(1, 3), Description = "files, or revisions and then a file" };
        var json = JsonOption();
        var markdown = new Option<bool>("--markdown") { Description = "for a review" };
        var textconv = new Option<bool>("--textconv") { Description = "one file, a line for each fact, for git" };
        var quiet = QuietOption("print nothing; the exit code tells");
        var color = Coloring.Option();
        command.Add(named);
        Option<bool>[] forms = [json, markdown, quiet, textconv];
        foreach (var option in forms) command.Add(option);
        command.Add(color);
        command.SetAction(parsed =>
        {
            string[] given = [.. forms.Where(form => parsed.GetValue(form)).Select(form => form.Name)];
            var versions = parsed.GetRequiredValue(named);
            if (given.Length > 1) return Misuse(streams, $"'{given[0]}' and '{given[1]}' are two ways to print: give one of them");
            if (given.Length > 0 && parsed.GetResult(color) is { Implicit: false })
                return Misuse(streams, $"'{given[0]}' has no color, so '--color' does not go with it");
            if (parsed.GetValue(textconv))
                return versions is [var file] ? Textconv(file, streams) : Misuse(streams, "'--textconv' takes one FILE");
            var inColor = Coloring.IsOn(parsed.GetValue(color)!, streams);
            return Compare(versions, Printing(given.FirstOrDefault(), inColor, streams), streams);
        });
    }

    private static Func<ScheduleChanges, IEnumerable<string>> Printing(string? form, bool inColor, Streams streams) => form switch
    {
        "--json" => changes => [ChangeJson.Of(changes)],
        "--markdown" => ChangeText.Markdown,
        "--quiet" => _ => [],
        _ => changes => ChangeText.Plain(changes).SelectMany(line => Line(line).Rows(streams.Screen, inColor)),
    };

    /// <summary>A fact begins with the sign of what happened to it.</summary>
    private static ReportLine Line(string line) => line is [var sign, ' ', ..] && TintOf(sign) is { } tint
        ? new ReportLine("", line[..1], line[1..], tint)
        : ReportLine.Plain(line);

    private static Tint? TintOf(char sign) => sign switch
    {
        '+' => Tint.Good,
        '-' => Tint.Bad,
        '>' or '~' => Tint.Doubtful,
        _ => null,
    };

    private static int Compare(string[] named, Func<ScheduleChanges, IEnumerable<string>> print, Streams streams)
    {
        var (old, now) = VersionInput.Of(named, streams);
        if ((ProblemOf(old) ?? ProblemOf(now)) is { } problem)
        {
            streams.Error.WriteLine(problem);
            return ExitCode.Unusable;
        }

        var changes = ScheduleChanges.Between(old.Snapshot!, now.Snapshot!);
        foreach (var line in print(changes)) streams.Out.WriteLine(line);
        return changes.AreNone ? ExitCode.Clean : Differ;
    }

    private static string? ProblemOf(ScheduleInput input)
    {
        if (input.ProblemLine is { } problem) return problem;
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
