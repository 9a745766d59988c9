namespace PanelTui.Engine.Running.Switching;

/// <summary>What is done before and after the supplies are changed over by hand, whichever the equipment.</summary>
internal static class HandSteps
{
    public static IEnumerable<SwitchingStep> Before(SwitchingFacts facts) =>
    [
        new("See that it is the grid that failed and not a breaker."),
        new("All branch breakers of this panel OFF.", (Handle.Branches, false)),
        .. SourceSteps.Start(facts),
    ];

    public static IEnumerable<SwitchingStep> After(SwitchingFacts facts)
    {
        if (facts.TooLarge.Length > 0)
            yield return new($"By the schedule the source does not start {SwitchingFacts.Listed(facts.TooLarge)}, not even one at a time and before the rest: leave off, or have a soft starter fitted.");
        if (facts.Motors.Length > 0)
            yield return new($"{Motors(facts)}{NotTold(facts)}");
        yield return new($"{(facts.Motors.IsEmpty && facts.TooLarge.IsEmpty ? "Branch" : "Then the other branch")} breakers ON one at a time, {(facts.HasOneLeg ? "the load" : "each leg")} watched on the source's meter{facts.NotLeftOff}.", (Handle.Branches, true));
        if (facts.TooLargeLater.Length > 0)
            yield return new($"What starts by itself does so again with others running. By the schedule the source does not start {SwitchingFacts.Listed(facts.TooLargeLater)} with all of them on: keep others off beside it, or have a soft starter fitted.");
        if (facts.NotToldLater.Length > 0)
            yield return new($"What starts by itself does so again with others running. Whether the source then starts {SwitchingFacts.Listed(facts.NotToldLater)} with all of them on is not to be told: {facts.WhyNotTold}. Keep others off beside it until its maker has said so.");
        yield return new($"Stay below the limits: {facts.Limits}. After an overload switch branch breakers off by hand, then start {(facts.IsPair ? "both units" : "the source")} again.");
    }

    public static IEnumerable<SwitchingStep> BeforeReturn() =>
    [
        new("See that the grid is back and steady."),
        new("All branch breakers of this panel OFF.", (Handle.Branches, false)),
    ];

    public static IEnumerable<SwitchingStep> Return(SwitchingFacts facts) =>
    [
        new(facts.LeaveOff.Length > 0 ? "Branch breakers ON one at a time, those that were left off too." : "Branch breakers ON one at a time.", (Handle.Branches, true)),
        .. SourceSteps.Stop(facts),
    ];

    private static string Motors(SwitchingFacts facts) => facts.Motors.Length == 1
        ? $"What has a motor first: the breaker of {SwitchingFacts.Listed(facts.Motors)} ON, and let it come up to speed before the next{facts.NotLeftOff}."
        : $"What has a motor first: its breaker ON one at a time, each up to speed before the next, in this order: {SwitchingFacts.Listed(facts.Motors)}{facts.NotLeftOff}.";

    private static string NotTold(SwitchingFacts facts) => facts.NotTold is [] ? "" :
        $" Whether the source starts {SwitchingFacts.Listed(facts.NotTold)} with nothing but motors on is not to be told: {facts.WhyNotTold}. Ask its maker before you rely on it.";
}
