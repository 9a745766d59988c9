namespace PanelTui.Engine.Running.Switching;

/// <summary>No grid and no transfer equipment are written down: the source is started and stopped, and nothing changes over.</summary>
internal sealed class AloneWay(SwitchingFacts facts) : SwitchingWay
{
    public override IEnumerable<SwitchingStep> ToStandby =>
    [
        new("Neither a grid nor transfer equipment is written down. If any other supply reaches this panel, stop: do not connect the source."),
        new("All branch breakers of this panel OFF.", (Handle.Branches, false)),
        .. facts.IsPluggedIn ? CableSteps.Join(facts, this) : [],
        .. SourceSteps.Start(facts),
        .. HandSteps.After(facts),
    ];

    public override IEnumerable<SwitchingStep> Back =>
    [
        new("There is no grid to go back to. To shut down: switch the loads off at themselves, motors first."),
        .. facts.IsGenerator
            ? SourceSteps.Stop(facts)
            : [new($"Then the {facts.UnitName} as {(facts.IsPair ? "their manual says; what hangs on them is dark until they run" : "its manual says; what hangs on it is dark until it runs")} again.")],
    ];
}
