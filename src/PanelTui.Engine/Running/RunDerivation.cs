using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;

namespace PanelTui.Engine.Running;

/// <summary>How what a scenario asks of its source comes about.</summary>
public static class RunDerivation
{
    public static Derivation WhyRunning(this ScenarioRun run) => new(
        FigureNames.OfScenario(FigureNames.Running, run.Name),
        $"What runs in {run.Name}, against every limit of the source",
        [
            .. run.Loads.Select(Step),
            .. run.Dead.Select(load => new DerivationStep(
                $"{load.Circuit.Called}: between legs in phase, no voltage", 0, "W", Citation.Arithmetic, [load.Circuit.Space])),
            .. run.Legs.Legs.Select(leg => new DerivationStep($"Leg {leg}", run.Legs[leg].Running.Value, "W", Citation.Arithmetic)),
            .. run.Legs.Legs.Select(leg => new DerivationStep($"Leg {leg}", run.Legs[leg].Amperes.Value, "A", Citation.Arithmetic)),
            .. run.Bounds.Select(Step),
            new DerivationStep("Neutral", run.Neutral.Value, "A", Citation.Arithmetic),
        ]);

    private static DerivationStep Step(PlacedLoad load) => new(
        $"{load.Circuit.Called}, {load.Placement}: {(load.Load.Running is null ? "rating x pf" : "running as measured")}",
        load.RunningWatts.Value,
        "W",
        Citation.Schedule,
        [load.Circuit.Space]);

    private static DerivationStep Step(SourceBound bound) => new(
        $"{bound.Called}: may carry",
        bound.May,
        bound.Unit,
        bound.Kind == BoundKind.Planning ? Citation.CommonPractice : Citation.Schedule);
}
