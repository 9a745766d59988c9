using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand.Methods;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>
/// A vehicle charger starts when a vehicle is plugged in, whatever else runs, so each scenario leaves room for it.
/// </summary>
public sealed class VehicleChargingBeyondSourceRule : CodeRule
{
    public override string Name => "vehicle-charging-beyond-source";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "Each scenario leaves the source enough for a vehicle charger on this panel, unless it leaves the charger "
        + "out.";

    public override string Why => "A charger takes all it is set to for hours, and starts by itself.";

    public override string Advice =>
        "Lower the charger's current setting, leave it out of the scenario under except, or keep it off with "
        + "standby: no.";

    public override CodeSection? Section => Selected.Section;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from charger in context.Connected.Loads
        where charger.Load.Kind == LoadKind.Ev
        let shortest = Shortages(context, charger).MaxBy(shortage => shortage.Asked.Value - shortage.Left.Value)
        where shortest is not null
        select Found(
            context,
            charger.Circuit.Spaces,
            $"{RuleWords.Place(charger.Circuit)} asks for {RuleWords.Beyond(shortest.Asked, shortest.Left)} on leg {shortest.Leg}; "
            + $"{shortest.Left} is left there{(shortest.Scenario.Length > 0 ? $" in {shortest.Scenario}" : "")}.");

    private static IEnumerable<Shortage> Shortages(RuleContext context, PlacedLoad charger)
    {
        if (SourceLimit.Of(context.Schedule.Source, context.Panel.System).PerLeg is not { } limit)
            return [];
        if (context.Scenarios.IsEmpty)
            return Shortages("", charger, limit, _ => Watts.Zero);
        return
            from run in context.Scenarios
            let runs = run.Loads.Any(load => ReferenceEquals(load, charger))
            where runs || MayStart(run, charger)
            from shortage in Shortages(
                run.Name, charger, limit, leg => run.Legs[leg].Running - (runs ? AskedOn(leg, charger) : Watts.Zero))
            select shortage;
    }

    private static IEnumerable<Shortage> Shortages(
        string scenario, PlacedLoad charger, Watts limit, Func<Leg, Watts> others) =>
        from leg in charger.Placement.Legs
        let left = Watts.Max(Watts.Zero, Watts.Max(Watts.Zero, limit) - others(leg))
        where AskedOn(leg, charger) > left
        select new Shortage(scenario, leg, AskedOn(leg, charger), left);

    private static Watts AskedOn(Leg leg, PlacedLoad charger) => charger.Placement.WattsOn(leg, charger.RunningWatts);

    /// <summary>Not where the scenario leaves it out, or another of its group runs in its place.</summary>
    private static bool MayStart(ScenarioRun run, PlacedLoad charger) =>
        charger.Circuit.Standby
        && !run.Circuits.Any(circuit => circuit.Ordinal == charger.Circuit.Ordinal)
        && !(charger.Circuit.Id is { } id && run.Scenario.Except.Contains(id));

    private sealed record Shortage(string Scenario, Leg Leg, Watts Asked, Watts Left);
}
