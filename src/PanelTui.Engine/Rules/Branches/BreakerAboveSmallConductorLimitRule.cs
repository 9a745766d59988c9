using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>Wires up to 10 AWG have a largest breaker whatever their ampacity; motors and air conditioners have rules of their own.</summary>
public sealed class BreakerAboveSmallConductorLimitRule : CodeRule
{
    public override string Name => "breaker-above-small-conductor-limit";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A small conductor sits behind a breaker no larger than its own limit.";

    public override string Why => "Small wires have a limit of their own, below what the ampacity table gives them.";

    public override string Advice =>
        "Check the size printed on the wire, and whether the circuit is one that 240.4(G) lets off.";

    public override CodeSection? Section => SmallConductorLimits.Section;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from branch in context.Branches
        where Limit(branch) < branch.Breaker
        select Above(context, branch.Circuit, branch.Circuit.Wire!, Limit(branch)!.Value);

    /// <summary>Nothing where no wire is stated, where it has no such limit, and on a motor circuit.</summary>
    internal static Amperes? Limit(BranchSizing branch) => branch is { IsMotorCircuit: false, Circuit.Wire: { } wire }
        ? SmallConductorLimits.Find(wire, branch.Edition)
        : null;

    private Finding Above(RuleContext context, Circuit circuit, Conductor wire, Amperes limit) => Found(
        context,
        [circuit.Space],
        $"{RuleWords.Place(circuit)} has a breaker of {circuit.Breaker.Rating}; the most for {wire} is {limit}.",
        "Check the size printed on the wire, along its whole length, and the breaker's handle.") with
    {
        Cite = SmallConductorLimits.CiteFor(wire, context.Edition),
    };
}
