using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand.Methods;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>
/// What runs in a scenario stays within what the source gives: on each leg, for spare power on one cannot help another.
/// </summary>
public sealed class SourceLegOverloadedRule : CodeRule
{
    public override string Name => "source-leg-overloaded";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "What a scenario runs stays within the source's continuous power on each leg.";

    public override string Why =>
        "An inverter shuts down and a generator's voltage falls when a leg asks for more than it has; spare "
        + "power on one leg cannot help another.";

    public override string Advice => "Take a circuit out of the scenario, or move one to another leg.";

    public override CodeSection? Section => Selected.Section;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        context.Scenarios.SelectMany(run => OnLegs(context, run).DefaultIfEmpty(InAll(context, run)).OfType<Finding>());

    private IEnumerable<Finding?> OnLegs(RuleContext context, ScenarioRun run) =>
        from leg in run.Legs.Legs
        where run.Legs[leg].Ok == false
        let carried = run.Legs[leg]
        select Found(
            context,
            SpacesOn(run, leg),
            $"{run.Name} runs {RuleWords.Beyond(carried.Running, carried.Limit!.Value)} on leg {leg}; the source gives {carried.Limit} there.");

    private Finding? InAll(RuleContext context, ScenarioRun run) => run is { Limit: { } limit, Ok: false }
        ? Found(
            context,
            $"{run.Name} runs {RuleWords.Beyond(run.Running, limit)}; the source gives {limit} in all.",
            "Take a circuit out of the scenario.")
        : null;

    private static IEnumerable<SpaceNumber> SpacesOn(ScenarioRun run, Leg leg) => run.Loads
        .Where(load => load.Placement.Legs.Contains(leg))
        .Select(load => load.Circuit.Space)
        .Distinct();
}
