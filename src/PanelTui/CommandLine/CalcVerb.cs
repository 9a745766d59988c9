using System.CommandLine;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui calc FILE`: legs, neutral, imbalance, demand, ratings.</summary>
internal sealed class CalcVerb : Verb
{
    public override string Name => "calc";

    public override string Summary => "legs, neutral, imbalance, demand and ratings";

    public override string Page => """
        Work out the figures of a schedule: connected load on each leg, neutral, imbalance,
        demand with the section each line rests on, and the ratings that follow.

        Usage:
          paneltui calc FILE [--json]

        Examples:
          paneltui calc shed.panel.yaml
          paneltui calc shed.panel.yaml --json | python3 -m json.tool

        With --json, one object on standard output; docs/calculation.md names every field.
        Exit codes: 0 worked out, 1 worked out and errors found, 2 the file cannot be read.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var file = new Argument<string>("FILE") { Description = "a schedule; - for standard input" };
        var json = new Option<bool>("--json") { Description = "one JSON object on standard output" };
        command.Add(file);
        command.Add(json);
        command.SetAction(parsed => Calculate(parsed.GetRequiredValue(file), parsed.GetValue(json), streams));
    }

    private static int Calculate(string file, bool asJson, Streams streams)
    {
        var input = ScheduleInput.Read(file, streams);
        if (input.Problem is { } problem)
        {
            streams.Error.WriteLine(problem);
            return ExitCode.Unusable;
        }

        if (input.Snapshot!.Assessment is not { } assessment)
        {
            foreach (var wrong in input.Snapshot.Diagnostics.Where(wrong => wrong.IsError))
                streams.Error.WriteLine(CheckReport.Line(input.Name, input.Snapshot, wrong));
            return ExitCode.Unusable;
        }

        if (asJson) streams.Out.WriteLine(CalcJson.Of(assessment));
        else foreach (var line in CalcSummary.Of(assessment)) streams.Out.WriteLine(line);
        return ExitCode.Of(assessment);
    }
}
