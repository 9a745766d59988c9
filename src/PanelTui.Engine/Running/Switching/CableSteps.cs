namespace PanelTui.Engine.Running.Switching;

/// <summary>Joining the cable between source and inlet and taking it apart: both with all supplies and the sun off, and all of it on again at the end.</summary>
internal static class CableSteps
{
    public static IEnumerable<SwitchingStep> Join(SwitchingFacts facts, SwitchingWay way) =>
    [
        .. Off(facts, way),
        new($"Check cable, plugs and inlet: {facts.Outlet}. No damage, no adapter to a smaller one."),
        new("Inlet end first, then the source; turn locking plugs until they lock."),
        .. On(facts, way, ", in an outage too: every other part of this page begins from there"),
    ];

    /// <summary>The same in reverse, once the source carries nothing.</summary>
    public static IEnumerable<SwitchingStep> Apart(SwitchingFacts facts, SwitchingWay way) =>
    [
        new(facts.HasGrid ? "Only when the panel is back on the grid and the source carries nothing." : "Only when the source carries nothing."),
        .. Off(facts, way),
        new("Source end first, then the inlet; close the inlet's cover."),
        .. On(facts, way, ""),
    ];

    private static IEnumerable<SwitchingStep> Off(SwitchingFacts facts, SwitchingWay way)
    {
        if (way.Disarm is { } disarm) yield return disarm;
        yield return new(
            $"{First(facts, way)}{(facts.IsGenerator ? "see that the generator is at rest and its breaker off" : $"{facts.OutputName} OFF")}.",
            [.. facts.HasGrid ? new[] { (Handle.Grid, false) } : [], .. facts.IsGenerator ? [] : new[] { (Handle.Output, false) }]);
        if (way.BeforeCable is { } look) yield return look;
        if (facts.HasSolar) yield return new("Solar off: open its disconnect, so that nothing feeds the source while the cable is handled.", (Handle.Solar, false));
    }

    private static string First(SwitchingFacts facts, SwitchingWay way) =>
        facts.HasGrid ? $"Both supplies off first: {way.GridBreaker} OFF, and " : "The source off first: ";

    /// <remarks>The grid's breaker is closed in an outage, too: otherwise nothing would close it when the grid is back.</remarks>
    private static IEnumerable<SwitchingStep> On(SwitchingFacts facts, SwitchingWay way, string evenThen)
    {
        if (facts.HasSolar) yield return new("Solar ON again.", (Handle.Solar, true));
        if (!facts.IsGenerator) yield return new($"{SwitchingFacts.Capital(facts.OutputName)} ON again.", (Handle.Output, true));
        if (facts.HasGrid) yield return new($"{SwitchingFacts.Capital(way.GridBreaker)} ON again{evenThen}.", (Handle.Grid, true));
        if (way.Arm is { } arm) yield return arm;
    }
}
