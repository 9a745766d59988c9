using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>
/// With the legs in phase the neutral bar carries all that the source gives, so it is rated for more than that.
/// </summary>
/// <remarks>The neutral bar is taken as rated like the bus, as panels of up to 200 A are made; its own rating has no key.</remarks>
public sealed class OneLegSourceAtNeutralBusRule : CodeRule
{
    public override string Name => "one-leg-source-at-neutral-bus";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "One 120 V unit on both legs is rated for less than the neutral bar of the panel.";

    public override string Why =>
        "The currents of both legs return together over the neutral bar, and nothing protects it for itself.";

    public override string Advice =>
        "Read the rating of the neutral bar on the panel's label, and the source's breaker.";

    /// <remarks>Less than, not up to: as the text was seen in a copy of Article 710.</remarks>
    public override CodeSection? Section { get; } = Nec.Section("710.15(C)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Source is { Arrangement: SourceArrangement.InPhase, Ocpd: { } device }
            && context.Panel is { Bus: { } bus, System.Legs.Length: > 1 } && device >= bus)
        {
            yield return Found(
                context,
                $"The source's breaker is {device} and the neutral bar, taken as rated like the bus, {bus}: it has to be less.");
        }
    }
}
