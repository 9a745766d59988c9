namespace PanelTui.Engine.Running.Switching;

/// <summary>Bringing the source up before it carries anything, and what becomes of it afterwards.</summary>
internal static class SourceSteps
{
    public static IEnumerable<SwitchingStep> Start(SwitchingFacts facts) => facts.IsGenerator
        ? [new($"{(facts.IsPluggedIn ? "The cable joined as above, start" : "Start")} the generator with nothing on it and let it warm up; its outlet or main breaker ON.", (Handle.Engine, true), (Handle.Output, true))]
        : [new($"See that {facts.OutputName} is on; read {(facts.IsPair ? "their" : "its")} state of charge and that no fault shows.")];

    public static IEnumerable<SwitchingStep> Stop(SwitchingFacts facts)
    {
        if (!facts.IsGenerator)
        {
            var charging = facts.Charging is { } band ? $": {band} by the schedule" : "";
            yield return new(facts.IsPair
                ? $"Look that the inverters take the grid and charge as they are set to{charging}."
                : $"Look that the inverter takes the grid and charges as it is set to{charging}.");
            yield break;
        }

        yield return new("The generator's breaker OFF; let it run without load for some minutes, then stop it.", (Handle.Output, false), (Handle.Engine, false));
        if (facts.IsPluggedIn)
            yield return new("The cable stays joined until it is taken apart as below, with every supply off.");
    }
}
