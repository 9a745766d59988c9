namespace PanelTui.Engine.Running.Switching;

/// <summary>No grid and no transfer equipment are written down: the source is started and stopped, and nothing changes over.</summary>
internal sealed class AloneWay(SwitchingFacts facts) : SwitchingWay
{
    public override IEnumerable<SwitchingStep> ToStandby =>
    [
        new("Neither a grid nor transfer equipment is written down. If any other supply reaches this panel, stop: do not connect the source."),
        new("All branch breakers of this panel OFF.", (Handle.Branches, false)),
        .. facts.IsPluggedIn ? Cable() : [],
        .. SourceSteps.Start(facts),
        .. HandSteps.After(facts),
    ];

    public override IEnumerable<SwitchingStep> Back =>
    [
        new("There is no grid to go back to. To shut down: switch the loads off at themselves, motors first."),
        .. facts.IsGenerator
            ? SourceSteps.Stop(facts)
            : [new("Then the inverters as their manual says; what hangs on them is dark until they run again.")],
    ];

    private IEnumerable<SwitchingStep> Cable() => facts.IsGenerator
        ? [new($"With the engine at rest and its breaker off: {Join()}")]
        :
        [
            new($"The inverters' output OFF; {Join()}", (Handle.Output, false)),
            new("The inverters' output ON again.", (Handle.Output, true)),
        ];

    private string Join() => $"check cable and plugs ({facts.Outlet}), join the panel's end first, then the source's, and turn locking plugs until they lock.";
}
