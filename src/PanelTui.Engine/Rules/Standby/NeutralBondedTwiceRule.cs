using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>
/// Where transfer equipment leaves the neutral connected, the bond at the service is the only one there may be.
/// </summary>
public sealed class NeutralBondedTwiceRule : CodeRule
{
    public override string Name => "neutral-bonded-twice";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "A source with a bonded neutral feeds through transfer equipment that switches the neutral.";

    public override string Why =>
        "With a bond at the source and another at the service neutral current flows on grounding conductors, and a "
        + "GFCI on the source trips.";

    public override string Advice =>
        "Read on the nameplate of the source whether its neutral is bonded to its frame; either lift that bond as "
        + "its manual says, or use transfer equipment that switches the neutral.";

    public override CodeSection? Section { get; } = Nec.Section("250.142(B)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule is { Transfer.NeutralIsSwitched: false, Source: { Neutral: SourceNeutral.Bonded } source })
        {
            yield return Found(
                context,
                "The neutral is bonded at the source and, through transfer equipment that does not switch it, at the service too"
                + $"{(source.Gfci == true ? "; the source's GFCI trips" : "")}.");
        }
    }
}
