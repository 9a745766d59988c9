namespace PanelTui.Engine.Running.Switching;

/// <summary>A transfer switch that a hand moves.</summary>
internal sealed class ManualWay(SwitchingFacts facts) : SwitchingWay
{
    public override IEnumerable<SwitchingStep> ToStandby =>
    [
        .. HandSteps.Before(facts),
        new("Transfer switch from the grid through OFF to the source, in one firm movement; where it has a switch for each circuit, one after the other.", (Handle.TransferSwitch, true)),
        .. HandSteps.After(facts),
    ];

    public override IEnumerable<SwitchingStep> Back =>
    [
        .. HandSteps.BeforeReturn(),
        new("Transfer switch from the source through OFF to the grid.", (Handle.TransferSwitch, false)),
        .. HandSteps.Return(facts),
    ];

    public override SwitchingStep BeforeCable => new("See that the transfer switch does not stand on the source.");
}
