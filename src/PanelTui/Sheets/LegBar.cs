using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Sheets;

/// <summary>One bar of the leg loads.</summary>
/// <param name="Limit">What the source may carry on the leg, in the same unit; nothing where it is not stated.</param>
internal sealed record LegBar(string What, Leg Leg, decimal Value, string Unit, decimal? Limit, string More)
{
    public bool Over => Value > Limit;

    /// <summary>The figure beside the bar.</summary>
    public string Words => Limit is { } limit
        ? $"{Shown.Rounded(Value, 0)} of {Shown.Rounded(limit, 0, Unit)}{(Over ? ", over" : "")}"
        : $"{Shown.Rounded(Value, 0, Unit)}{More}";

    public static IEnumerable<LegBar> Of(Assessment assessment)
    {
        var legs = assessment.Schedule.Panel.System.Legs;
        return
        [
            .. legs.Select(leg => InVoltAmperes(
                "Connected load", leg, assessment.Connected.VoltAmperesOn(leg), assessment.Connected.AmperesOn(leg))),
            .. assessment.Demand is { } demand
                ? legs.Select(leg => InVoltAmperes(
                    "Calculated load", leg, demand.Legs.VoltAmperesOn(leg), demand.Legs.AmperesOn(leg)))
                : [],
            .. assessment.Scenarios.SelectMany(run => legs.Select(leg => new LegBar(
                $"Running: {run.Name}", leg, run.Legs[leg].Running.Value, "W", run.Legs[leg].Limit?.Value, ""))),
        ];
    }

    private static LegBar InVoltAmperes(string what, Leg leg, VoltAmperes power, Amperes current) =>
        new(what, leg, power.Value, "VA", null, $", {Shown.Rounded(current.Value, 1, "A")}");
}
