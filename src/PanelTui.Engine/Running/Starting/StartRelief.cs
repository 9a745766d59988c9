using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running.Starting;

/// <summary>The way out for a start that is too much, or not to be told, with all the others running.</summary>
/// <param name="Alone">The same start with the rest off: nothing runs but what hangs on its own breaker.</param>
/// <param name="Off">Which others to have off while it starts, in the order of shedding; empty where even that does not help.</param>
public sealed record StartRelief(StartMoment Alone, ImmutableArray<Circuit> Off)
{
    public static StartRelief Of(StartMoment moment, ScenarioRun run, Schedule schedule)
    {
        var start = moment.Starting[0];
        var (own, others) = (start.Circuit.Ordinal, run.Loads.RemoveAll(load => load.Circuit.Ordinal == start.Circuit.Ordinal));
        var alone = moment with { Asked = Sum(moment, run.Loads.Where(load => load.Circuit.Ordinal == own)) - start.Running + start.Legs };
        return new StartRelief(alone, alone.Ok == true ? OffFirst(moment, others, schedule) : []);
    }

    private static ImmutableArray<Circuit> OffFirst(StartMoment moment, ImmutableArray<PlacedLoad> others, Schedule schedule)
    {
        var order = new SheddingOrder(schedule.Circuits);
        var off = ImmutableArray.CreateBuilder<Circuit>();
        for (var left = moment; left.Ok != true;)
        {
            var next = order.Next(others, load => TakenBy(load, left));
            if (next.IsEmpty) break;
            off.AddRange(next);
            var gone = next.Select(circuit => circuit.Ordinal).ToHashSet();
            left = left with { Asked = left.Asked - Sum(left, others.Where(load => gone.Contains(load.Circuit.Ordinal))) };
            others = others.RemoveAll(load => gone.Contains(load.Circuit.Ordinal));
        }

        return off.ToImmutable();
    }

    /// <summary>What a load takes of the legs that are beyond, or of all where only their sum is.</summary>
    private static decimal TakenBy(PlacedLoad load, StartMoment left)
    {
        var beyond = left.Asked.System.Legs.Where(leg => left.AskedOn(leg) > left.MayOn).ToArray();
        return beyond.Length > 0 ? beyond.Sum(leg => load.RunningLegs.VoltAmperesOn(leg).Value) : load.RunningLegs.Total.Value;
    }

    private static LegLoads Sum(StartMoment moment, IEnumerable<PlacedLoad> loads) =>
        loads.Aggregate(LegLoads.None(moment.Asked.System), (sum, load) => sum + load.RunningLegs);
}
