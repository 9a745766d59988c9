using PanelTui.Engine.Codes;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Motors;

/// <summary>A motor circuit has a breaker larger than its wire, so the wire itself must carry 125 % of the motor.</summary>
public sealed class MotorConductorTooSmallRule : CodeRule
{
    public override string Name => "motor-conductor-too-small";

    public override Severity Severity => Severity.Error;

    public override string Summary => "The wire of a motor circuit carries 125 % of its largest motor and all of the others.";

    public override string Why => "A motor draws more than its rating for a while after each start.";

    public override string Advice =>
        "Check the motor's rating and the size printed on the wire; a larger wire would match.";

    public override CodeSection? Section => BranchLoad.MotorSection;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from branch in context.Branches
        let wire = branch.Wire
        where branch.IsMotorCircuit
            && branch.Loads.All(load => load.Load.MinimumCircuitAmpacity is null)
            && wire?.Carries(branch.Load.Conductor) == false
        select Small(context, branch, wire);

    private Finding Small(RuleContext context, BranchSizing branch, ConductorFit wire) => Found(
        context,
        [branch.Circuit.Space],
        $"{RuleWords.Place(branch.Circuit)} asks for {RuleWords.Beyond(branch.Load.Conductor.Required, wire.Ampacity)} "
        + $"with 125 % of its motor; {wire.Conductor} carries {wire.Ampacity} at {RuleWords.Terminals(context, branch.Conditions)}.",
        "Check the motor's horsepower and voltage, and the size printed on the wire.");
}
