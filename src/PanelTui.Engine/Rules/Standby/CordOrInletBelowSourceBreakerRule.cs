using PanelTui.Engine.Codes;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>An outlet, cord or inlet behind a larger breaker burns before the breaker trips.</summary>
public sealed class CordOrInletBelowSourceBreakerRule : CodeRule
{
    public override string Name => "cord-or-inlet-below-source-breaker";

    public override Severity Severity => Severity.Error;

    public override string Summary => "Outlet, cord and inlet are rated for no less than the breaker of the source.";

    public override string Why => "The source's breaker lets through more than outlet, cord and inlet are made for.";

    public override string Advice =>
        "Check the markings on outlet, cord and inlet, and the source's breaker; no adapter mends it.";

    public override CodeSection? Section { get; } = Nec.FromMemory("110.3(B)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Chain.Of(LinkKind.Outlet) is { Ok: false } outlet)
        {
            yield return Found(
                context,
                $"The source's breaker is {outlet.Ahead}; {outlet.Name} are rated {outlet.Rating}.",
                "Look for an adapter in between, and check the marking of each plug, connector and inlet.");
        }
    }
}
