using System.CommandLine;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine;
using PanelTui.Engine.Derivations;
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
          paneltui calc FILE [--json | --why FIGURE]

        Examples:
          paneltui calc shed.panel.yaml
          paneltui calc shed.panel.yaml --why minimum-ampacity
          paneltui calc shed.panel.yaml --json | python3 -m json.tool

        Figures: connected, legs, neutral, imbalance, demand, demand-neutral,
        minimum-ampacity, feeder-device, conductor, grounding-conductor, voltage-drop,
        transfer-rating, chain, running, and branch:SPACE for each circuit.
        With --json, one object on standard output; docs/calculation.md names every field.
        Exit codes: 0 worked out, 1 worked out and errors found, 2 the file cannot be read.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var file = new Argument<string>("FILE") { Description = "a schedule; - for standard input" };
        var json = new Option<bool>("--json") { Description = "one JSON object on standard output" };
        var why = new Option<string?>("--why") { Description = "how one figure came about, and the sections it rests on" };
        why.CompletionSources.Add([.. FigureNames.All]);
        command.Add(file);
        command.Add(json);
        command.Add(why);
        command.SetAction(parsed => Calculate(
            parsed.GetRequiredValue(file),
            assessment => parsed.GetValue(why) is { } figure ? Why(assessment, figure, streams) : All(assessment, parsed.GetValue(json), streams),
            streams));
    }

    private static int Calculate(string file, Func<Assessment, int> print, Streams streams)
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

        return print(assessment);
    }

    private static int All(Assessment assessment, bool asJson, Streams streams)
    {
        if (asJson) streams.Out.WriteLine(CalcJson.Of(assessment));
        else foreach (var line in CalcSummary.Of(assessment)) streams.Out.WriteLine(line);
        return ExitCode.Of(assessment);
    }

    private static int Why(Assessment assessment, string figure, Streams streams)
    {
        if (assessment.Why(figure) is not { } derivation)
        {
            var known = assessment.Figures;
            streams.Error.WriteLine(DisplayText.Clean(
                $"paneltui: there is no figure {figure} here{DidYouMean.Hint(figure, known)}. The figures are {string.Join(", ", known)}."));
            return ExitCode.Unusable;
        }

        foreach (var line in DerivationText.Of(derivation)) streams.Out.WriteLine(line);
        return ExitCode.Of(assessment);
    }
}
