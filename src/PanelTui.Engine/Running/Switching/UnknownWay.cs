namespace PanelTui.Engine.Running.Switching;

/// <summary>Nothing is written down that keeps the supplies apart, so there is no way across.</summary>
internal sealed class UnknownWay : SwitchingWay
{
    public override IEnumerable<SwitchingStep> ToStandby =>
        [new("No transfer equipment is written down, so there are no steps: do not connect the source.")];

    public override IEnumerable<SwitchingStep> Back =>
        [new("Ask whoever installed it what keeps the supplies apart, and write it down under transfer.")];
}
