using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui run FILE`: what the source feels in a scenario, what can start, how long it lasts.</summary>
internal sealed class RunVerb : Verb
{
    public override string Name => "run";

    public override string Summary => "what the source feels, what can start, how long it lasts";

    public override string Page => """
        Run a scenario on its source: every leg against every limit, what to shed, each
        start against the surge, one unit alone, hours to the reserve and a course of
        72 hours, and where the neutral is bonded. docs/running.md says how.

        Usage:
          paneltui run FILE [--scenario NAME] [--from CHARGE] [--at HOUR]
                       [--grid | --outage] [--table] [--json]

        Examples:
          paneltui run shed.panel.yaml
          paneltui run shed.panel.yaml --scenario "Harvest night" --from 80%
          paneltui run shed.panel.yaml --grid --at 18 --table

        Without --scenario the first of the file, or all on standby where it has none.
        --from is the state of charge at the beginning, 100% unless given; --at its hour
        of the day, 0 to 23. The course is an outage: the grid is gone, a generator that
        charges is there. With --grid the grid is there to charge, as between outages;
        with --outage neither is. The sum of the other course is told in a line.
        --table adds every hour; --json prints one object with every hour, for every
        scenario unless named (docs/json.md).
        Exit codes: 0 worked out, 1 worked out and errors found, 2 the file cannot be
        read, or there is no such scenario.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var file = new Argument<string>("FILE") { Description = "a schedule; - for standard input" };
        var scenario = new Option<string?>("--scenario") { Description = "a scenario's name, as in the file" };
        var from = new Option<string>("--from") { Description = "a state of charge, such as 80%", DefaultValueFactory = _ => "100%" };
        var at = new Option<int>("--at") { Description = "an hour of the day, 0 to 23" };
        var grid = new Option<bool>("--grid") { Description = "the grid is there to charge" };
        var outage = new Option<bool>("--outage") { Description = "grid and generator do not charge" };
        var table = new Option<bool>("--table") { Description = "the course hour by hour" };
        var json = JsonOption();
        foreach (var option in new Option[] { scenario, from, at, grid, outage, table, json }) command.Add(option);
        command.Add(file);
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(grid) && parsed.GetValue(outage))
                return Misuse(streams, "'--grid' and '--outage' are two courses: give one of them");
            if (parsed.GetValue(table) && parsed.GetValue(json))
                return Misuse(streams, "'--json' has every hour already, so '--table' does not go with it");
            if (Request(parsed.GetValue(from)!, parsed.GetValue(at)) is not { } asked)
                return Misuse(streams, "write '--from' as a share such as 80%, 0 to 100, and '--at' as an hour, 0 to 23");
            return AssessedFile.Read(parsed.GetRequiredValue(file), streams) is { } assessment
                ? Run(assessment, parsed.GetValue(scenario), asked with { Charges = Charges(parsed.GetValue(grid), parsed.GetValue(outage)) }, (parsed.GetValue(json), parsed.GetValue(table)), streams)
                : ExitCode.Unusable;
        });
    }

    private int Run(Assessment assessment, string? name, RunRequest asked, (bool Json, bool Table) form, Streams streams)
    {
        var runs = RunsOf(assessment);
        var chosen = name is null ? runs[0] : runs.FirstOrDefault(run => run.Name == name);
        if (chosen is null)
        {
            var known = runs.Select(run => run.Name).ToList();
            return Misuse(streams, $"there is no scenario '{name}'{DidYouMean.Ending(name!, known)} The file has {string.Join(", ", known)}.");
        }

        if (form.Json) streams.Out.WriteLine(ScenarioJson.Of(assessment, name is null ? runs : [chosen], asked));
        else Print(new RunText(assessment, chosen, asked), form.Table, runs.Length > 1 && name is null ? runs : [], streams);
        return ExitCode.Of(assessment);
    }

    private static void Print(RunText text, bool table, IReadOnlyList<ScenarioRun> runs, Streams streams)
    {
        foreach (var line in text.Lines()) streams.Out.WriteLine(InAscii(line.TrimEnd()));
        if (table) foreach (var line in text.Table()) streams.Out.WriteLine(line);
        foreach (var line in ScenarioTable.Of(runs)) streams.Out.WriteLine(InAscii(line));
    }

    /// <summary>The page has no sign but ASCII of its own, for printers and mail: a name that is cut ends in a tilde.</summary>
    private static string InAscii(string line) => line.Replace('…', '~');

    private static ImmutableArray<ScenarioRun> RunsOf(Assessment assessment) => assessment.Scenarios.IsEmpty
        ? [ScenarioRun.OfAll(assessment.Schedule, assessment.Connected.Loads)]
        : assessment.Scenarios;

    private static RunRequest? Request(string from, int at) =>
        decimal.TryParse(from.TrimEnd('%', ' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var share)
            && share is >= 0 and <= 100 && at is >= 0 and < 24
            ? RunRequest.Usual with { From = new Percent(share), StartHour = at }
            : null;

    private static bool? Charges(bool grid, bool outage) => grid ? true : outage ? false : null;
}
