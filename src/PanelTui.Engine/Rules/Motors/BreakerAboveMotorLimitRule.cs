using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;

namespace PanelTui.Engine.Rules.Motors;

/// <summary>A breaker that is too large lets a motor circuit burn on a short circuit before it trips.</summary>
public sealed class BreakerAboveMotorLimitRule : CodeRule
{
    public override string Name => "breaker-above-motor-limit";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "The breaker of a motor circuit is no larger than what lets the motor start.";

    public override string Why => "A breaker beyond what starting needs lets a fault burn longer.";

    public override string Advice =>
        "Check the motor's nameplate and the breaker's handle; a smaller breaker still lets it start.";

    public override CodeSection? Section => MotorDevice.Section;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from branch in context.Branches
        let range = branch.Range
        where range is { IsForCompressor: false } && branch.Breaker > range.Most
        select Found(
            context,
            [branch.Circuit.Space],
            $"{RuleWords.Place(branch.Circuit)} has a breaker of {branch.Breaker}; its motor takes {range.Usual} as a rule "
            + $"and {range.Most} at most.",
            "Check the horsepower on the plate, and the largest device that the motor's or controller's maker names.");
}
