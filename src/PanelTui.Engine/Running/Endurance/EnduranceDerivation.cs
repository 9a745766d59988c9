using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>How average load and hours to the reserve come about.</summary>
public static class EnduranceDerivation
{
    public static Derivation WhyEndurance(this ScenarioRun run, StandbySource? source) => new(
        FigureNames.OfScenario(FigureNames.Endurance, run.Name),
        $"Average load of {run.Name}, and hours to the reserve with nothing that charges",
        [
            .. run.Loads.Select(load => new DerivationStep(
                $"{load.Circuit.Called}: {Shown.Rounded(load.RunningWatts.Value, 0, "W")} x duty {load.Load.Duty}",
                AverageLoad.Of(load).Value,
                "W",
                Citation.Schedule,
                [load.Circuit.Space])),
            new DerivationStep("Average load", run.Average.Value, "W", Citation.Arithmetic),
            .. source?.Battery is { } battery ? OfBattery(battery, run) : [],
        ]);

    private static IEnumerable<DerivationStep> OfBattery(Battery battery, ScenarioRun run)
    {
        var stored = battery.AboveReserve(Percent.Whole);
        yield return new($"Stored between full and the reserve of {battery.Reserve}", stored.Value, "Wh", Citation.Schedule);
        yield return new("Idle draw", battery.Idle.Value, "W", Citation.Schedule);
        yield return new(
            $"Drawn from it: average / efficiency {battery.Efficiency} + idle", battery.DrawnFor(run.Average).Value, "W", Citation.Arithmetic);
        if (run.ToReserve is { } hours)
            yield return new("Hours to the reserve: stored / drawn", hours.Value, "h", Citation.Arithmetic);
    }
}
