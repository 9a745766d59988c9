using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Motors;

/// <summary>The nameplate says the largest breaker that equipment may sit behind.</summary>
public sealed class BreakerAboveMocpRule : CodeRule
{
    public override string Name => "breaker-above-mocp";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A breaker is no larger than the maximum overcurrent protection on the nameplate.";

    public override string Why => "The equipment was listed with protection no larger than its nameplate says.";

    public override string Advice =>
        "Read the nameplate and the breaker's handle; a smaller breaker would match.";

    public override CodeSection? Section { get; } = Nec.Section("440.4(B), 440.22");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from branch in context.Branches
        let most = LeastOf(branch)
        where most < branch.Breaker
        select Found(
            context,
            [branch.Circuit.Space],
            $"{RuleWords.Place(branch.Circuit)} has a breaker of {branch.Breaker}; the nameplate allows {most}.",
            "Read the nameplate again, and the breaker's handle.");

    private static Amperes? LeastOf(BranchSizing branch) =>
        branch.Circuit.IsSpare ? null : branch.Circuit.Loads.Min(load => load.MaximumOvercurrentProtection);
}
