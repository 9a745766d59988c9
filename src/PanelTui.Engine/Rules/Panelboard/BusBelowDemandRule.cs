using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>The bus carries at least what the feeder has to carry.</summary>
public sealed class BusBelowDemandRule : CodeRule
{
    public override string Name => "bus-below-demand";

    public override Severity Severity => Severity.Error;

    public override string Summary => "The bus is rated for no less than the minimum ampacity of its feeder.";

    public override string Why => "The bus carries more than it is made for whenever the calculated load is on.";

    public override string Advice =>
        "Check the rating on the panel's label; move circuits elsewhere or to the other leg.";

    public override CodeSection? Section { get; } = Nec.FromMemory("408.30");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Panel.Bus is { } bus && context.Demand?.MinimumAmpacity is { } needed && needed > bus)
        {
            yield return Found(
                context,
                $"The worst leg asks for {RuleWords.Beyond(needed, bus)}; the bus is rated {bus}.");
        }
    }
}
