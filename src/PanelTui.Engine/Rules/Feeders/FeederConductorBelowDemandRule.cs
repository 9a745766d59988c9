using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>The conductors of the feeder carry what the panel asks for, at their ends and on the way.</summary>
public sealed class FeederConductorBelowDemandRule : CodeRule
{
    public override string Name => "feeder-conductor-below-demand";

    public override Severity Severity => Severity.Error;

    public override string Summary => "The conductors of the feeder carry the minimum ampacity of the worst leg.";

    public override string Why => "The feeder runs too hot when the load that was calculated is there.";

    public override string Advice =>
        "Check the size printed on the conductors, the terminals' marking and the loads.";

    public override CodeSection? Section => FeederSizing.ConductorSection;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Feeder is { StatedCarries: false, Stated: { } stated } feeder)
        {
            yield return Found(
                context,
                stated.AtEnds < feeder.Load.Required
                    ? $"{Need(feeder.Load.Required, stated.Conductor, stated.AtEnds)} at {RuleWords.Terminals(context, feeder.Conditions)}."
                    : $"{Need(feeder.Load.Calculated, stated.Conductor, stated.OnTheWay)} {OnTheWay(feeder.Conditions)}.",
                feeder.Conductor is { } smallest
                    ? $"Check the size printed on the conductors and the terminals' marking; the smallest that would do is {smallest}."
                    : "Check the loads: no size of the table is as large.");
        }
    }

    private static string Need(Amperes load, Conductor conductor, Amperes carries) =>
        $"The worst leg asks for {RuleWords.Beyond(load, carries)}; {conductor} carries {Shown.Rounded(carries.Value, 1)} A";

    private static string OnTheWay(WiringConditions conditions) =>
        $"in {conditions.Ambient} with {Shown.Exactly(conditions.CurrentCarrying)} current-carrying conductors together";
}
