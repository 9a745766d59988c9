using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>What is on for three hours warms a breaker through: it counts 125 %, unless the assembly is listed for 100 %.</summary>
public sealed class ContinuousLoadAbove80PercentOfBreakerRule : CodeRule
{
    public override string Name => "continuous-load-above-80-percent-of-breaker";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "A breaker carries its loads with the continuous ones at 125 %.";

    public override string Why => "A breaker that carries its full rating for hours heats its terminals and trips early.";

    public override string Advice =>
        "Check how long the loads are on; spread them over circuits, or look for an assembly listed for 100 %.";

    public override CodeSection? Section => BranchLoad.DeviceSection;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from branch in context.Branches
        where branch.Load.Continuous > Amperes.Zero && branch.Load.Device > branch.Breaker
        select Found(
            context,
            [branch.Circuit.Space],
            $"{RuleWords.Place(branch.Circuit)} has {Shown.Rounded(branch.Load.AtFull.Value, 1)} A, "
            + $"{Shown.Rounded(branch.Load.Continuous.Value, 1)} A of it continuous, which asks for "
            + $"{RuleWords.Beyond(branch.Load.Device, branch.Breaker)}; its breaker is {branch.Breaker}.",
            "Check what is really on for three hours or more; move a load to another circuit.");
}
