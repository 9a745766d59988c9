using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Loads;

/// <summary>What runs together in a scenario.</summary>
/// <param name="Scenario">The scenario.</param>
/// <param name="Circuits">Those that run in it.</param>
/// <param name="Members">All their loads, those of one group too.</param>
public sealed record ScenarioLoads(Scenario Scenario, ImmutableArray<Circuit> Circuits, ImmutableArray<PlacedLoad> Members)
{
    /// <summary>What counts of them: all but the smaller ones of each group.</summary>
    public ImmutableArray<PlacedLoad> Loads => Noncoincident.Largest(Members, Scenario.Starting);

    /// <summary>Those that a larger one of their group stands for.</summary>
    public ImmutableArray<PlacedLoad> LeftOut => Noncoincident.LeftOut(Members, Scenario.Starting);

    /// <summary>The circuits of the scenario, and of their loads all but the smaller ones of each group.</summary>
    public static ScenarioLoads Of(Scenario scenario, Schedule schedule, ImmutableArray<PlacedLoad> all)
    {
        var named = scenario.Running.ToHashSet(StringComparer.Ordinal);
        var except = scenario.Except.ToHashSet(StringComparer.Ordinal);
        ImmutableArray<Circuit> circuits =
            [.. schedule.Circuits.Where(circuit => Runs(circuit, scenario, named, except))];
        return OfCircuits(scenario, circuits, all);
    }

    /// <summary>As <see cref="Of"/>, with the circuits chosen by hand.</summary>
    public static ScenarioLoads OfCircuits(Scenario scenario, ImmutableArray<Circuit> circuits, ImmutableArray<PlacedLoad> all)
    {
        var ordinals = circuits.Select(circuit => circuit.Ordinal).ToHashSet();
        return new ScenarioLoads(scenario, circuits, [.. all.Where(load => ordinals.Contains(load.Circuit.Ordinal))]);
    }

    /// <summary>What starts last runs in any case; an exception takes out what was named or is on standby.</summary>
    private static bool Runs(Circuit circuit, Scenario scenario, HashSet<string> named, HashSet<string> except)
    {
        if (circuit.IsSpare)
            return false;
        if (circuit.Id is not { } id)
            return scenario.RunsAll && circuit.Standby;
        if (id == scenario.Starting)
            return true;
        return !except.Contains(id) && (named.Contains(id) || (scenario.RunsAll && circuit.Standby));
    }
}
