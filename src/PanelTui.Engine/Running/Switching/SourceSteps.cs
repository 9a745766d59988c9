namespace PanelTui.Engine.Running.Switching;

/// <summary>Bringing the source up before it carries anything, and what becomes of it afterwards.</summary>
internal static class SourceSteps
{
    public static IEnumerable<SwitchingStep> Start(SwitchingFacts facts) => facts.IsGenerator
        ? [new($"{(facts.IsPluggedIn ? "The cable joined as above, start" : "Start")} the generator with nothing on it and let it warm up; its outlet or main breaker ON.", (Handle.Engine, true), (Handle.Output, true))]
        : [new("See that the inverters' output is on; read their state of charge and that no fault shows.")];

    public static IEnumerable<SwitchingStep> Stop(SwitchingFacts facts)
    {
        if (!facts.IsGenerator)
        {
            yield return new($"Look that the inverters take the grid and charge as they are set to{(facts.Charging is { } charging ? $": {charging} by the schedule" : "")}.");
            yield break;
        }

        yield return new("The generator's breaker OFF; let it run without load for some minutes, then stop it.", (Handle.Output, false), (Handle.Engine, false));
        if (facts.IsPluggedIn)
            yield return new("Take the cable apart when the engine is at rest: first at the source, then at the inlet; close the inlet's cover.");
    }
}
