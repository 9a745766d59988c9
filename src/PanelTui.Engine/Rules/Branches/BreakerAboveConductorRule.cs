using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>A breaker protects its wire: it is no larger than the ampacity, or the next standard rating where that is allowed.</summary>
public sealed class BreakerAboveConductorRule : CodeRule
{
    public override string Name => "breaker-above-conductor";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A breaker is no larger than what protects its wire.";

    public override string Why => "The wire runs too hot before the breaker trips.";

    public override string Advice =>
        "Check the size printed on the wire; a smaller breaker or a larger wire would match.";

    public override CodeSection? Section => ConductorProtection.NextSizeUp;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from branch in context.Branches
        where !branch.IsMotorCircuit && !(BreakerAboveSmallConductorLimitRule.Limit(branch) < branch.Breaker)
        let wire = branch.Wire
        where wire is not null && branch.Protection.ByAmpacity(wire) < branch.Breaker
        select Above(context, branch, wire, branch.Protection.ByAmpacity(wire));

    private Finding Above(RuleContext context, BranchSizing branch, ConductorFit wire, Amperes most) => Found(
        context,
        [branch.Circuit.Space],
        $"{RuleWords.Place(branch.Circuit)} has a breaker of {branch.Breaker}; {wire.Conductor} carries {wire.Ampacity} "
        + $"at {RuleWords.Terminals(context, branch.Conditions)}, and the largest breaker for that is {most}{NotRoundedUp(branch)}.",
        "Check the size printed on the wire, the marking of the terminals, and the breaker's handle.");

    private static string NotRoundedUp(BranchSizing branch) =>
        branch.Protection.RoundsUp ? "" : ", with several receptacles on it";
}
