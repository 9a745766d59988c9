using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>
/// Where transfer equipment switches the neutral, the source is a system of its own and needs its own bond.
/// </summary>
public sealed class NeutralBondedNowhereRule : CodeRule
{
    public override string Name => "neutral-bonded-nowhere";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "Behind transfer equipment that switches the neutral the source has a bonded neutral.";

    public override string Why =>
        "Without any bond no breaker clears a fault from hot to case; testers show an open ground and vehicle "
        + "chargers refuse to start.";

    public override string Advice =>
        "Read on the nameplate of the source whether its neutral is bonded; bond it at the source as its manual "
        + "says, or use transfer equipment that leaves the neutral connected.";

    public override CodeSection? Section { get; } = Nec.FromMemory("250.30(A)(1)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule is { Transfer.NeutralIsSwitched: true, Source.Neutral: SourceNeutral.Floating })
        {
            yield return Found(
                context,
                "The transfer equipment switches the neutral away from the bond at the service, and the source's neutral is "
                + "floating.");
        }
    }
}
