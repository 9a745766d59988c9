using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>What runs in a scenario stays within the source's own breaker.</summary>
public sealed class SourceDeviceBelowScenarioRule : CodeRule
{
    public override string Name => "source-device-below-scenario";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "The current of a scenario stays within the source's breaker on each of its poles.";

    public override string Why => "The source's breaker trips, and everything is dark.";

    public override string Advice =>
        "Take a circuit out of the scenario, or move one to another leg; check the breaker on the source.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        context.Schedule.Source is not { Ocpd: { } device } source
            ? []
            : from run in context.Scenarios
              from pole in source.Arrangement == SourceArrangement.InPhase ? OnePole(run) : Poles(run)
              where pole.Current > device
              select Found(
                  context,
                  $"{run.Name} draws {RuleWords.Beyond(pole.Current, device)} on {pole.Called}; the source's breaker is {device}.");

    private static IEnumerable<(string Called, Amperes Current)> Poles(ScenarioRun run) =>
        run.Legs.Legs.Select(leg => ($"leg {leg}", run.Legs[leg].Amperes));

    /// <summary>One pole feeds all legs, and their currents are in phase.</summary>
    private static IEnumerable<(string Called, Amperes Current)> OnePole(ScenarioRun run) =>
        [("all legs together", run.Legs.Values.Aggregate(Amperes.Zero, (sum, leg) => sum + leg.Amperes))];
}
