using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>The main breaker carries what the panel asks for.</summary>
public sealed class MainBelowDemandRule : CodeRule
{
    public override string Name => "main-below-demand";

    public override Severity Severity => Severity.Error;

    public override string Summary => "The main breaker is no smaller than the minimum ampacity of the worst leg.";

    public override string Why => "The main trips when the load that was calculated is there.";

    public override string Advice =>
        "Check the main's handle; move circuits elsewhere or to the other leg, or plan for a larger main.";

    public override CodeSection? Section { get; } = Nec.Section("215.3");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Panel.Main?.Rating is { } main && context.Demand?.MinimumAmpacity is { } needed && needed > main)
        {
            yield return Found(
                context,
                $"The worst leg asks for {RuleWords.Beyond(needed, main)}; the main breaker is {main}.");
        }
    }
}
