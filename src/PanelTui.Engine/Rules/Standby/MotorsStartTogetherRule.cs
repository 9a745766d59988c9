using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>Equipment that closes by itself starts every motor that is switched on in the same moment.</summary>
/// <remarks>Judged with all that is on standby, for the equipment knows of no scenario; where a single start is too much, another rule says so.</remarks>
public sealed class MotorsStartTogetherRule : CodeRule
{
    public override string Name => "motors-start-together";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "What automatic equipment closes on, all motors in one moment, stays within the source's surge.";

    public override string Why =>
        "By hand motors are started one after the other; automatic equipment closes on all of them at once, and the source stalls or shuts down.";

    public override string Advice =>
        "Have the starts staggered by load management or time-delay relays, fit soft starters, leave motors off this panel, or ask the source's maker what it starts at once.";

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Transfer is not { Kind: TransferKind.Automatic, LoadManagement: false }) return [];
        var starts = ScenarioRun.OfAll(context.Schedule, context.Connected.Loads).Starts;
        return starts.Together is { Ok: false, Starting.Length: > 1 } together
            ? [Found(context, Circuits(together).SelectMany(circuit => circuit.Spaces), Sentence(together))]
            : [];
    }

    private static IEnumerable<Circuit> Circuits(StartMoment together) =>
        together.Starting.Select(start => start.Circuit).DistinctBy(circuit => circuit.Ordinal).OrderBy(circuit => circuit.Space);

    private static string Sentence(StartMoment together)
    {
        var worst = together.WorstLeg;
        var where = together.AskedOn(worst) > together.MayOn
            ? $"leg {worst} to {RuleWords.Beyond(together.AskedOn(worst).Value, together.MayOn!.Value.Value, "VA")}; the surge is {together.MayOn}"
            : $"the source to {RuleWords.Beyond(together.Asked.Total.Value, together.MayInAll?.Value ?? 0, "VA")}; the surge is {together.MayInAll} in all";
        return $"Automatic transfer starts {Shown.Exactly(together.Starting.Length)} motors at once ({string.Join(", ", Circuits(together).Select(circuit => circuit.Called))}) and brings {where}.";
    }
}
