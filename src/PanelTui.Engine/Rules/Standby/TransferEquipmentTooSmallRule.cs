using PanelTui.Engine.Codes;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>Transfer equipment carries what the panel asks for, and is not below the devices ahead of it.</summary>
public sealed class TransferEquipmentTooSmallRule : CodeRule
{
    public override string Name => "transfer-equipment-too-small";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "Transfer equipment is rated for the worst leg and for the device ahead of it on either supply.";

    public override string Why =>
        "Contacts that carry more than their rating can burn or weld, and then nothing keeps the two supplies apart.";

    public override string Advice =>
        "Read the label of the transfer equipment; check the loads and the devices ahead of it.";

    public override CodeSection? Section { get; } = Nec.Section("702.5");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Transfer is { Ok: false, Stated: { } stated } transfer)
        {
            yield return Found(
                context,
                $"The transfer equipment is rated {stated}; {Reason(transfer)} {RuleWords.Beyond(transfer.Required, stated)}.",
                transfer.Standard is { } standard
                    ? $"Read its label; ratings are made from {standard} up that would do."
                    : "Read its label and check the loads: no rating made is as large.");
        }
    }

    private static string Reason(TransferRating transfer) =>
        transfer.Required == transfer.MinimumAmpacity ? "the worst leg asks for"
        : transfer.Required == transfer.FeederDevice ? "the device ahead on the normal supply is"
        : "the device ahead on the standby supply is";
}
