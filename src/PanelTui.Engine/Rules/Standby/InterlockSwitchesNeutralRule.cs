using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>An interlock holds breakers, and breakers leave the neutral where it is.</summary>
public sealed class InterlockSwitchesNeutralRule : CodeRule
{
    public override string Name => "interlock-switches-neutral";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "No interlock of breakers is written down as switching the neutral.";

    public override string Why =>
        "An interlock leaves the neutral connected to the service, so a source whose neutral is bonded is then bonded twice.";

    public override string Advice =>
        "Look at the equipment: write transfer.switches_neutral: no for an interlock, or transfer.kind: manual for a switch with a pole for the neutral.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        context.Schedule.Transfer is { Kind: TransferKind.Interlock, SwitchesNeutral: true }
            ? [Found(context, "The transfer equipment is an interlock, and written down as switching the neutral.")]
            : [];
}
