using PanelTui.Engine.Codes;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>
/// Neutral and ground are bonded at the service only; in a subpanel the bond puts neutral current on the ground.
/// </summary>
/// <remarks>Off the grid, with a floating source, this panel may hold the one bond that there has to be.</remarks>
public sealed class NeutralBondedInSubpanelRule : CodeRule
{
    public override string Name => "neutral-bonded-in-subpanel";

    public override Severity Severity => Severity.Error;

    public override string Summary => "Neutral and ground stay apart in a panel that a feeder supplies.";

    public override string Why =>
        "A second bond puts neutral current on grounding conductors, raceways and enclosures.";

    public override string Advice =>
        "Look for a bonding screw or strap and for grounds on the neutral bar; the bond belongs at the service.";

    public override CodeSection? Section { get; } = Nec.Section("250.24(A)(5)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Panel.NeutralBonded == true && !IsTheOneBond(context))
        {
            yield return Found(
                context,
                IsASecondBond(context)
                    ? "The neutral is bonded to ground in this panel, and at the source, too."
                    : "The neutral is bonded to ground in this panel, which a feeder supplies.");
        }
    }

    private static bool IsASecondBond(RuleContext context) =>
        NeutralVerdict.Of(context.Schedule) is { Standing: SourceStanding.OnlySystem, Bonds: NeutralBonds.Twice };

    private static bool IsTheOneBond(RuleContext context) =>
        NeutralVerdict.Of(context.Schedule) is { Standing: SourceStanding.OnlySystem, Bonds: NeutralBonds.Once };
}
