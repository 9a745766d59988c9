using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>What a motor draws as it starts, with everything else of the scenario running, against the source's surge.</summary>
public sealed class StartBeyondSurgeRule : CodeRule
{
    public override string Name => "start-beyond-surge";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "Each motor of a scenario can start last, with all the others running, within the source's surge.";

    public override string Why =>
        "An inverter shuts down and a generator stalls when a motor asks for more than the surge; what ran goes dark with it.";

    public override string Advice =>
        "Read the code letter or locked-rotor current on the plate; start it first, fit a soft starter, or leave it off.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from run in context.Scenarios
        from moment in run.Starts.Moments
        where moment.Ok == false
        select Found(context, moment.Starting[0].Circuit.Spaces, Sentence(run, moment));

    private static string Sentence(ScenarioRun run, StartMoment moment)
    {
        var start = moment.Starting[0];
        var over = moment.Asked.System.Legs.Where(leg => moment.AskedOn(leg) > moment.MayOn).ToArray();
        var where = over is [var leg, ..]
            ? $"leg {leg} to {Beyond(moment.AskedOn(leg), moment.MayOn!.Value)}; the surge is {moment.MayOn}"
            : $"the source to {Beyond(moment.Asked.Total, moment.MayInAll ?? VoltAmperes.Zero)}; the surge is {moment.MayInAll} in all";
        return $"In {run.Name} {RuleWords.Place(start.Circuit)} starts with {RuleWords.Beyond(start.Power.Value, 0, "VA")} ({start.Words}) and brings {where}.";
    }

    private static string Beyond(VoltAmperes asked, VoltAmperes may) => RuleWords.Beyond(asked.Value, may.Value, "VA");
}
