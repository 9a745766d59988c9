using System.Collections.Immutable;
using PanelTui.Engine.Loads;
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
        var left = run.Loads;
        for (var binding = run.Binding; binding is { Ok: false }; binding = ScenarioRun.BindingOf(ScenarioRun.BoundsOf(left, schedule)))
        {
            if (Next(left, binding) is not { } next)
                break;
            shed.Add(next);
            left = left.RemoveAll(load => load.Circuit.Ordinal == next.Ordinal);
        }
        return new Shedding(shed.ToImmutable(), shed.Count == 0 ? run : run.Without(shed, schedule));
    }

    private static bool IsWithin(ScenarioRun run) => run.Binding?.Ok ?? true;

    private static Circuit? Next(ImmutableArray<PlacedLoad> loads, SourceBound passed) => loads
        .GroupBy(load => load.Circuit.Ordinal)
        .Select(own => (own.First().Circuit, Takes: own.Sum(load => On(load, passed))))
        .Where(one => one.Takes > 0)
        .OrderBy(one => one.Circuit.Priority ?? int.MaxValue)
        .ThenByDescending(one => one.Takes)
        .ThenBy(one => one.Circuit.Ordinal)
        .Select(one => one.Circuit)
        .FirstOrDefault();

    /// <summary>What a load puts on the leg that the passed limit is about, or on all of them, in watts.</summary>
    private static decimal On(PlacedLoad load, SourceBound passed) => passed.Leg is { } leg
        ? load.Placement.WattsOn(leg, load.RunningWatts).Value
        : load.RunningWatts.Value;
}
