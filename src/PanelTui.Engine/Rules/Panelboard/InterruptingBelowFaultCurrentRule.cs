using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>A breaker can interrupt the fault current that is there.</summary>
public sealed class InterruptingBelowFaultCurrentRule : CodeRule
{
    public override string Name => "interrupting-below-fault-current";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "The lowest interrupting rating in the panel is no less than the fault current available at it.";

    public override string Why =>
        "A breaker that opens on more current than it can interrupt may burst or stay closed.";

    public override string Advice =>
        "Ask the utility for the fault current and reckon it at this panel; the breaker with the lowest rating "
        + "counts for all.";

    public override CodeSection? Section { get; } = Nec.Section("110.9");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Panel is { Interrupting: { } rating, FaultCurrent: { } fault } && rating < fault)
            yield return Found(context, $"The breakers interrupt {rating}; the fault current available is {fault}.");
    }
}
