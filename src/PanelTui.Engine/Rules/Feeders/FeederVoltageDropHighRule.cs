using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>The feeder takes its part of the drop before any branch does; the note of the code names 3 %, and binds nobody.</summary>
public sealed class FeederVoltageDropHighRule : CodeRule
{
    public override string Name => "feeder-voltage-drop-high";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "The feeder loses no more than 3 % on its worst leg.";

    public override string Why => "Every circuit behind the feeder starts with what the feeder has lost.";

    public override string Advice =>
        "Check length and size; larger conductors lose less. The limit is a note of the code, not a rule, unless adopted.";

    public override CodeSection? Section { get; } = Nec.Section("215.2(A)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Feeder?.VoltageDrop is { } drop && drop.Worst > VoltageDropLimits.Alone)
        {
            yield return Found(
                context,
                $"The feeder loses {RuleWords.Beyond(drop.Worst, VoltageDropLimits.Alone)} on leg {drop.WorstLeg} "
                + $"in {drop.Length} of {drop.Conductor}; the code's note names {VoltageDropLimits.Alone}.",
                "Check its length and its conductors; even out the legs, or use a larger size.");
        }
    }
}
