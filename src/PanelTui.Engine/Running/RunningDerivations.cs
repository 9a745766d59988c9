using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;

namespace PanelTui.Engine.Running;

/// <summary>What each scenario asks of the legs, load by load.</summary>
public static class RunningDerivations
{
    public static Derivation Why(this ImmutableArray<ScenarioRun> runs) => new(
        FigureNames.Running, "Running on the standby source, scenario by scenario", [.. runs.SelectMany(Steps)]);

    private static IEnumerable<DerivationStep> Steps(ScenarioRun run) =>
    [
        .. run.Loads.Select(load => new DerivationStep(
            $"{run.Name}: {load.Label}{(load.Load.Running is null ? "" : ", as measured")}",
            load.RunningWatts.Value,
            "W",
            Citation.Schedule,
            [load.Circuit.Space])),
        .. run.Legs.Legs.SelectMany(leg => new DerivationStep?[]
        {
            new($"{run.Name}: leg {leg}", run.Legs[leg].Running.Value, "W", Citation.Arithmetic),
            run.Legs[leg].Limit is { } limit
                ? new($"{run.Name}: what leg {leg} may carry", limit.Value, "W", Citation.Schedule)
                : null,
        }.OfType<DerivationStep>()),
        new($"{run.Name}: neutral", run.Neutral.Value, "A", Citation.Arithmetic),
    ];
}
