using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running;

/// <summary>Which circuits to switch off, in which order, until a scenario fits its source.</summary>
/// <param name="Shed">In the order in which they go.</param>
/// <param name="Left">What runs without them.</param>
public sealed record Shedding(ImmutableArray<Circuit> Shed, ScenarioRun Left)
{
    /// <summary>Whether what is left fits; false where nothing that could be shed is left and it still does not.</summary>
    public bool Fits => IsWithin(Left);

    /// <summary>
    /// The lowest `priority` goes first, then circuits without a number; of equals the one that takes most off the limit that is
    /// passed furthest. A circuit that takes nothing off it stays, whatever its number.
    /// </summary>
    public static Shedding Of(ScenarioRun run, Schedule schedule)
    {
        var shed = ImmutableArray.CreateBuilder<Circuit>();
        while (!IsWithin(run) && Next(run) is { } next)
        {
            shed.Add(next);
            run = run.Without(next, schedule);
        }
        return new Shedding(shed.ToImmutable(), run);
    }

    private static bool IsWithin(ScenarioRun run) => run.Binding?.Ok ?? true;

    private static Circuit? Next(ScenarioRun run) => run.Circuits
        .Select(circuit => (Circuit: circuit, Takes: On(run, circuit)))
        .Where(one => one.Takes > 0)
        .OrderBy(one => one.Circuit.Priority ?? int.MaxValue)
        .ThenByDescending(one => one.Takes)
        .Select(one => one.Circuit)
        .FirstOrDefault();

    /// <summary>What a circuit puts on the legs that the passed limit is about, in watts.</summary>
    private static decimal On(ScenarioRun run, Circuit circuit) => run.Loads
        .Where(load => load.Circuit.Ordinal == circuit.Ordinal)
        .Sum(load => run.Binding?.Leg is { } leg
            ? load.Placement.WattsOn(leg, load.RunningWatts).Value
            : load.RunningWatts.Value);
}
