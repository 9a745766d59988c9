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
        Work out the figures of a schedule: connected load on each leg, neutral,
        imbalance, demand with the section each line rests on, and the ratings that
        follow.

        Usage:
          paneltui calc FILE [--why FIGURE] [--json]

        Examples:
          paneltui calc shed.panel.yaml
          paneltui calc shed.panel.yaml --why minimum-ampacity
          paneltui calc shed.panel.yaml --json | python3 -m json.tool

        Figures: connected, legs, neutral, imbalance, demand, demand-neutral, minimum-
        ampacity, feeder-device, conductor, grounding-conductor, voltage-drop, transfer-
        rating, chain, branch:SPACE for each circuit, and running:NAME, starting:NAME,
        endurance:NAME for each scenario. With --json, one object on standard output,
        of one figure with --why; docs/json.md and docs/json/ describe every key.
        Exit codes: 0 worked out, 1 worked out and errors found, 2 the file cannot be
        read.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var file = new Argument<string>("FILE") { Description = "a schedule; - for standard input" };
        var json = JsonOption();
        var why = new Option<string?>("--why") { Description = "a figure, such as minimum-ampacity" };
        why.CompletionSources.Add([.. FigureNames.All]);
        command.Add(file);
        command.Add(json);
        command.Add(why);
        command.SetAction(parsed => AssessedFile.Read(parsed.GetRequiredValue(file), streams) switch
        {
            null => ExitCode.Unusable,
            var assessment when parsed.GetValue(why) is { } figure => Why(assessment, figure, parsed.GetValue(json), streams),
            var assessment => All(assessment, parsed.GetValue(json), streams),
        });
    }

    private static int All(Assessment assessment, bool asJson, Streams streams)
    {
        if (asJson) streams.Out.WriteLine(CalcJson.Of(assessment));
        else foreach (var line in CalcSummary.Of(assessment)) streams.Out.WriteLine(line);
        return ExitCode.Of(assessment);
    }

    private int Why(Assessment assessment, string figure, bool asJson, Streams streams)
    {
        if (assessment.Why(figure) is not { } derivation)
        {
            var known = assessment.Figures;
            return Misuse(streams, $"there is no figure '{figure}' here{DidYouMean.Ending(figure, known)} The figures are {string.Join(", ", known)}.");
        }

        if (asJson) streams.Out.WriteLine(DerivationJson.Of(derivation));
        else foreach (var line in DerivationText.Of(derivation)) streams.Out.WriteLine(line);
        return ExitCode.Of(assessment);
    }
}
