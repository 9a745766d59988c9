using System.Globalization;
using PanelTui.Engine;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Sizing;

namespace PanelTui.Presentation;

/// <summary>The figures of a schedule as a page of text, at most 100 columns wide.</summary>
internal sealed class CalcSummary(Assessment assessment)
{
    private readonly Schedule _schedule = assessment.Schedule;

    public static IEnumerable<string> Of(Assessment assessment) =>
        new CalcSummary(assessment).Lines().Select(line => line.TrimEnd());

    private IEnumerable<string> Lines() =>
    [
        .. Title(), "", .. Connected(), "", .. Demand(), "", .. Ratings(), .. assessment.Scenarios.SelectMany(Scenario), "", .. Findings(),
    ];

    private IEnumerable<string> Title()
    {
        var fill = PanelFill.Of(_schedule);
        yield return DisplayText.Clean(_schedule.Panel.Name.Length == 0 ? "(panel without a name)" : _schedule.Panel.Name);
        yield return $"{_schedule.Panel.System}, {_schedule.Panel.Spaces} spaces: {fill.PolesUsed} poles used, {fill.SpacesOpen} spaces open";
    }

    private IEnumerable<string> Connected()
    {
        yield return Row("Connected load", Figure.Of(assessment.Connected.Total));
        foreach (var leg in _schedule.Panel.System.Legs)
        {
            yield return Row(
                $"  leg {leg}",
                Figure.Of(assessment.Connected.VoltAmperesOn(leg)),
                Figure.Of(assessment.Connected.AmperesOn(leg)));
        }

        yield return Row("  neutral", "", Figure.Of(assessment.Connected.Neutral));
        yield return Row("  imbalance", Figure.Of(assessment.Connected.Imbalance), "", Imbalance.Definition);
    }

    private IEnumerable<string> Demand()
    {
        var method = _schedule.Demand.Method.Word;
        if (assessment.Demand is not { } demand) return [$"Demand by {method}: not without demand.measured_peak"];
        return [.. Demand(method, demand)];
    }

    private IEnumerable<string> Demand(string method, DemandResult demand)
    {
        yield return $"Demand by {method}";
        foreach (var step in demand.Steps)
            yield return Row($"  {DisplayText.Clean(step.Label)}", Figure.Of(new VoltAmperes(step.Value)), "", $"{step.Cite}");
        yield return Row("  in all", Figure.Of(demand.Total));
        foreach (var leg in _schedule.Panel.System.Legs)
            yield return Row($"  leg {leg}", Figure.Of(demand.Legs.VoltAmperesOn(leg)), Figure.Of(demand.Legs.AmperesOn(leg)));
        yield return Row("  neutral", Figure.Of(demand.NeutralVoltAmperes), Figure.Of(demand.Neutral), Cite(DemandResult.NeutralSection));
        yield return Row("  least ampacity", "", Figure.Of(demand.MinimumAmpacity), $"{Cite(DemandResult.ContinuousSection)}; 430.24");
    }

    private IEnumerable<string> Ratings()
    {
        if (assessment is not { Feeder: { } feeder, Transfer: { } transfer }) yield break;
        yield return Row("Feeder device", "", $"{Needs(feeder.StandardOcpd)}, {Has(_schedule.Feeder?.Ocpd)}");
        yield return Row("  conductor", "", $"{Needs(feeder.Conductor)}, {Has(_schedule.Feeder?.Conductor)}");
        yield return Row("  grounding conductor", "", feeder.GroundingConductor is { } ground ? $"needs {ground}" : "none in the table");
        yield return Row("  voltage drop", feeder.VoltageDrop is { } drop ? Figure.Of(drop.Worst) : "", "", DropRemark(feeder.VoltageDrop));
        yield return Row("Transfer equipment", "", $"{Needs(transfer.Standard)}, {Has(transfer.Stated)}");
        yield return Row("From source to bus", "", assessment.Chain.FirstWeak is { } weak ? $"weak at {weak.Name}" : "no weak link among those stated");
    }

    private IEnumerable<string> Scenario(ScenarioRun run)
    {
        yield return "";
        yield return $"Scenario: {DisplayText.Clean(run.Name)}";
        foreach (var leg in run.Legs.Legs)
        {
            var limit = run.Legs[leg].Limit is { } may ? $"of {Figure.Of(may)}{(run.Legs[leg].Ok == false ? ", over it" : "")}" : "no limit stated";
            yield return Row($"  leg {leg}", Figure.Of(run.Legs[leg].Running), Figure.Of(run.Legs[leg].Amperes), limit);
        }

        yield return Row("  neutral", "", Figure.Of(run.Neutral));
    }

    private IEnumerable<string> Findings()
    {
        var counts = FindingCount.Of(assessment);
        yield return $"Findings: {counts}. `paneltui check` lists them.";
        yield return "Not a substitute for the code in force, the authority having jurisdiction or licensed practice.";
    }

    private static string DropRemark(VoltageDrop? drop) => drop is null
        ? "no length stated"
        : $"leg {drop.WorstLeg}, {Shown.Rounded(drop.Length.Value, 0, "ft")} of {drop.Conductor}";

    private static string Needs(Conductor? conductor) => conductor is { } known ? $"needs {known}" : "needs more than the table has";

    private static string Has(Conductor? conductor) => conductor is { } known ? $"stated {known}" : "none stated";

    private static string Needs(Amperes? rating) => rating is { } known ? $"needs {known}" : "needs more than is made";

    private static string Has(Amperes? rating) => rating is { } known ? $"stated {known}" : "none stated";

    private string Cite(Engine.Codes.CodeSection section) => $"{section.In(_schedule.Code.Edition)}";

    private static string Row(string label, string power, string current = "", string remark = "") =>
        string.Create(CultureInfo.InvariantCulture, $"{(DisplayText.Width(label) < 44 ? DisplayText.Fit(label, 44) : label)} {power,10} {current,9}   {remark}");
}
