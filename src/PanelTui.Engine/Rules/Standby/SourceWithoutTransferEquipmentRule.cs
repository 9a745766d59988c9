using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>Two supplies, and nothing written down that keeps them apart.</summary>
/// <remarks>Without a device on the normal supply there may be no grid at all, so nothing is said then.</remarks>
public sealed class SourceWithoutTransferEquipmentRule : CodeRule
{
    public override string Name => "source-without-transfer-equipment";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "Between the normal supply and a standby source stands listed transfer equipment or a listed interlock.";

    public override string Why =>
        "Two supplies that meet destroy the source, and put voltage on a line that others believe dead.";

    public override string Advice =>
        "Never connect the source before transfer equipment is in place; then describe it under transfer.";

    public override CodeSection? Section { get; } = Nec.Section("702.5");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule is { Source: not null, Transfer: null, Feeder.Ocpd: { } device })
        {
            yield return Found(
                context,
                $"The panel has a normal supply behind {device} and a standby source, and no transfer equipment between them.");
        }
    }
}
