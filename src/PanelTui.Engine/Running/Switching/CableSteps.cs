namespace PanelTui.Engine.Running.Switching;

/// <summary>Joining the cable between source and inlet with both supplies and the sun off; all of it is on again at the end.</summary>
internal static class CableSteps
{
    public static IEnumerable<SwitchingStep> Of(SwitchingFacts facts, SwitchingWay way)
    {
        if (way.Disarm is { } disarm) yield return disarm;
        yield return facts.IsGenerator
            ? new("Both supplies off first: the grid's breaker to this equipment OFF, and see that the generator is at rest and its breaker off.", (Handle.Grid, false))
            : new("Both supplies off first: the grid's breaker to this equipment OFF, and the inverters' output OFF.", (Handle.Grid, false), (Handle.Output, false));
        if (way.BeforeCable is { } look) yield return look;
        if (facts.HasSolar) yield return new("Solar off: open its disconnect, so that nothing feeds the source while cables are joined.", (Handle.Solar, false));
        yield return new($"Check cable, plugs and inlet: {facts.Outlet}. No damage, no adapter to a smaller one.");
        yield return new("Inlet end first, then the source; turn locking plugs until they lock. Take apart in the reverse order, with both supplies off again.");
        if (facts.HasSolar) yield return new("Solar ON again.", (Handle.Solar, true));
        if (!facts.IsGenerator) yield return new("The inverters' output ON again.", (Handle.Output, true));
        yield return new("The grid's breaker ON again, if the panel is not to go to standby now.", (Handle.Grid, true));
        if (way.Arm is { } arm) yield return arm;
    }
}
