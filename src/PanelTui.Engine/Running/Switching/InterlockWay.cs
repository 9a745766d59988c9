namespace PanelTui.Engine.Running.Switching;

/// <summary>A main breaker and a back-fed one of which a slide lets only one be closed.</summary>
internal sealed class InterlockWay(SwitchingFacts facts) : SwitchingWay
{
    public override IEnumerable<SwitchingStep> ToStandby =>
    [
        .. HandSteps.Before(facts),
        new("Main breaker (grid) OFF.", (Handle.Grid, false)),
        new("Slide the interlock, then the back-fed breaker of the source ON.", (Handle.BackFed, true)),
        .. HandSteps.After(facts),
    ];

    public override IEnumerable<SwitchingStep> Back =>
    [
        .. HandSteps.BeforeReturn(),
        new("Back-fed breaker of the source OFF.", (Handle.BackFed, false)),
        new("Slide the interlock back, then main breaker (grid) ON.", (Handle.Grid, true)),
        .. HandSteps.Return(facts),
    ];

    public override string GridBreaker => "the main breaker (grid)";

    public override SwitchingStep BeforeCable => new("See that the back-fed breaker, which the inlet feeds, is off.");
}
