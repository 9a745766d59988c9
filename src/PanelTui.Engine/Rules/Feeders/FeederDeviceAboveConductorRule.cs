using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>The device ahead of the feeder protects its conductors on either supply.</summary>
public sealed class FeederDeviceAboveConductorRule : CodeRule
{
    public override string Name => "feeder-device-above-conductor";

    public override Severity Severity => Severity.Error;

    public override string Summary => "The conductors of the feeder are protected by the device ahead on either supply.";

    public override string Why => "The conductors run too hot before the device ahead trips.";

    public override string Advice =>
        "Check the conductors' size and the devices on both supplies; a smaller device or larger conductors would match.";

    public override CodeSection? Section => ConductorProtection.NextSizeUp;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Chain.Of(LinkKind.FeederConductor) is { Ok: false, Protects: { } most, Ahead: { } ahead } link)
        {
            yield return Found(
                context,
                $"The device ahead of the feeder is {ahead}; {context.Schedule.Feeder!.Conductor} carries "
                + $"{Shown.Rounded(link.Rating!.Value.Value, 1)} A, and the largest device for that is {most}.",
                "Check the size printed on the conductors, the terminals' marking, and the devices ahead on both supplies.");
        }
    }
}
