using PanelTui.Engine.Codes;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>The device ahead of the feeder carries what the panel asks for.</summary>
public sealed class FeederDeviceBelowDemandRule : CodeRule
{
    public override string Name => "feeder-device-below-demand";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "The feeder's overcurrent device is no smaller than the minimum ampacity of the worst leg.";

    public override string Why => "The feeder's device trips when the load that was calculated is there.";

    public override string Advice =>
        "Check the device and the conductors behind it, and the loads; a larger device needs larger conductors, too.";

    public override CodeSection? Section => FeederSizing.Section;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Feeder?.Ocpd is { } device && context.Feeder is { } feeder && feeder.Required > device)
        {
            yield return Found(
                context,
                $"The worst leg asks for {RuleWords.Beyond(feeder.Required, device)}; the feeder's device is {device}.",
                feeder.StandardOcpd is { } standard
                    ? $"Check the device and the conductors; the next standard rating is {standard}."
                    : "Check the loads: no standard rating is as large.");
        }
    }
}
