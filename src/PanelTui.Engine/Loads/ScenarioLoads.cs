using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Loads;

/// <summary>What runs together in a scenario.</summary>
public sealed record ScenarioLoads(Scenario Scenario, ImmutableArray<Circuit> Circuits, ImmutableArray<PlacedLoad> Loads)
{
    /// <summary>Loads of these circuits that a larger one of their group stands for.</summary>
    public required ImmutableArray<PlacedLoad> LeftOut { get; init; }

    /// <summary>The circuits of the scenario, and of their loads all but the smaller ones of each group.</summary>
    public static ScenarioLoads Of(Scenario scenario, Schedule schedule, ImmutableArray<PlacedLoad> all)
    {
        ImmutableArray<Circuit> circuits = [.. schedule.Circuits.Where(circuit => Runs(circuit, scenario))];
        var ordinals = circuits.Select(circuit => circuit.Ordinal).ToHashSet();
        ImmutableArray<PlacedLoad> named = [.. all.Where(load => ordinals.Contains(load.Circuit.Ordinal))];
        return new ScenarioLoads(scenario, circuits, Noncoincident.Largest(named))
        {
            LeftOut = Noncoincident.LeftOut(named),
        };
    }

    /// <summary>What starts last runs in any case; an exception takes out what was named or is on standby.</summary>
    private static bool Runs(Circuit circuit, Scenario scenario)
    {
        if (circuit.IsSpare)
            return false;
        if (circuit.Id is not { } id)
            return scenario.RunsAll && circuit.Standby;
        if (id == scenario.Starting)
            return true;
        return !scenario.Except.Contains(id)
            && (scenario.Running.Contains(id) || (scenario.RunsAll && circuit.Standby));
    }
}
