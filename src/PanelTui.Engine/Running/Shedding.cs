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
    /// In the order of <see cref="SheddingOrder"/>, each time against the limit that is passed furthest. A circuit that takes nothing
    /// off it stays, whatever its number, unless its handle is tied to one that goes. Where one of a group goes another of it runs.
    /// </summary>
    public static Shedding Of(ScenarioRun run, Schedule schedule)
    {
        var order = new SheddingOrder(schedule.Circuits);
        var shed = ImmutableArray.CreateBuilder<Circuit>();
        var left = run.Members;
        var on = run.Loads;
        for (var binding = run.Binding; binding is { Ok: false }; binding = ScenarioRun.BindingOf(ScenarioRun.BoundsOf(on, schedule)))
        {
            var passed = binding;
            var next = order.Next(on, load => On(load, passed));
            if (next.IsEmpty)
                break;
            shed.AddRange(next);
            left = left.RemoveAll(load => next.Any(circuit => circuit.Ordinal == load.Circuit.Ordinal));
            on = Noncoincident.Largest(left, run.Scenario.Starting);
        }
        return new Shedding(shed.ToImmutable(), shed.Count == 0 ? run : run.Without(shed, schedule));
    }

    private static bool IsWithin(ScenarioRun run) => run.Binding?.Ok ?? true;

    /// <summary>What a load puts on the leg that the passed limit is about, or on all of them, in watts.</summary>
    private static decimal On(PlacedLoad load, SourceBound passed) => passed.Leg is { } leg
        ? load.Placement.WattsOn(leg, load.RunningWatts).Value
        : load.RunningWatts.Value;
}
