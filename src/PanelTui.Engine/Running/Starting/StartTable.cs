using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Starting;

/// <summary>The starts of a scenario: each last, with all the others running; the one that asks most first.</summary>
/// <param name="Moments">One for each motor-like load.</param>
/// <param name="Running">What all of the scenario takes once it runs.</param>
/// <param name="Surge">What the source gives for a start.</param>
/// <param name="Continuous">What it gives for as long as it runs.</param>
public sealed record StartTable(
    ImmutableArray<StartMoment> Moments, LegLoads Running, SurgeLimit Surge, SourceLimit Continuous)
{
    /// <summary>The start that asks most of the source; nothing where nothing has a motor.</summary>
    public StartMoment? Worst => Moments.FirstOrDefault();

    public static StartTable Of(ImmutableArray<PlacedLoad> loads, LegLoads running, StandbySource? source, CodeEdition edition)
    {
        var (surge, continuous) = (SurgeLimit.Of(source, running.System), SourceLimit.Of(source, running.System));
        var starts = loads.Where(MotorStart.IsMotorLike).Select(load => MotorStart.Of(load, edition));
        var moments = starts.Select(start => new StartMoment([start], running - start.Running + start.Legs, surge, continuous));
        return new StartTable([.. moments.OrderByDescending(moment => moment.Weight)], running, surge, continuous);
    }

    /// <summary>All of them in one moment, as when equipment closes by itself; nothing where nothing has a motor.</summary>
    /// <remarks>Of several alike all start.</remarks>
    public StartMoment? Together => Moments.IsEmpty
        ? null
        : new StartMoment(
            [.. Moments.Select(moment => moment.Starting[0])],
            Moments.Select(moment => moment.Starting[0]).Aggregate(Running, (sum, start) => sum + start.LegsOfAll - start.Load.RunningLegs),
            Surge,
            Continuous);

    /// <summary>How many may start in one moment, whichever they are, with all the others running.</summary>
    /// <remarks>
    /// None where already one is too many; nothing where no limit is stated. On each leg those are taken that add most to it.
    /// </remarks>
    public int? AtOnce
    {
        get
        {
            if (Worst?.Ok is null)
                return null;
            var most = Moments.Length;
            foreach (var leg in Running.System.Legs)
                most = Math.Min(most, Fitting(Running.VoltAmperesOn(leg), Added(extra => extra.VoltAmperesOn(leg)), Worst.MayOn));
            return Math.Min(most, Fitting(Running.Total, Added(extra => extra.Total), Worst.MayInAll));
        }
    }

    /// <summary>
    /// Breaker by breaker, so that the largest meets the least that runs: each with what then runs. All that is on one breaker starts
    /// as it closes.
    /// </summary>
    public ImmutableArray<StartMoment> EasiestOrder
    {
        get
        {
            var waiting = Moments.Select(moment => moment.Starting[0]).ToImmutableArray();
            var runs = waiting.Aggregate(Running, (sum, start) => sum - start.Load.RunningLegs);
            var order = waiting.GroupBy(start => start.Circuit.Ordinal).Select(breaker => breaker.ToImmutableArray()).OrderByDescending(Extra);
            var moments = ImmutableArray.CreateBuilder<StartMoment>();
            foreach (var breaker in order)
            {
                moments.Add(Moment(breaker, runs));
                runs = breaker.Aggregate(runs, (sum, start) => sum + start.Load.RunningLegs);
            }
            return moments.ToImmutable();
        }
    }

    /// <summary>
    /// Groups that start one after the other, the largest first and as many at once as the source carries: what a time delay or load
    /// management would have to do. A group that is too much is one start that is too much beside what has no motor.
    /// </summary>
    public ImmutableArray<StartMoment> Stages
    {
        get
        {
            var waiting = Moments.Select(moment => moment.Starting[0]).OrderByDescending(Extra).ToList();
            var runs = waiting.Aggregate(Running, (sum, start) => sum - start.Load.RunningLegs);
            var stages = ImmutableArray.CreateBuilder<StartMoment>();
            while (waiting.Count > 0)
            {
                var stage = Stage(runs, waiting);
                stages.Add(stage);
                runs = stage.Starting.Aggregate(runs, (sum, start) => sum + start.Load.RunningLegs);
                waiting.RemoveAll(start => stage.Starting.Any(started => ReferenceEquals(started, start)));
            }

            return stages.ToImmutable();
        }
    }

    private StartMoment Stage(LegLoads runs, List<MotorStart> waiting)
    {
        var stage = Moment([waiting[0]], runs);
        foreach (var start in waiting.Skip(1))
        {
            if (Moment([.. stage.Starting, start], runs) is { Ok: true } larger) stage = larger;
        }

        return stage;
    }

    private StartMoment Moment(ImmutableArray<MotorStart> starting, LegLoads runs) =>
        new(starting, starting.Aggregate(runs, (sum, start) => sum + start.LegsOfAll), Surge, Continuous);

    private static decimal Extra(MotorStart start) => WorstOf(start.Legs - start.Running);

    private static decimal Extra(ImmutableArray<MotorStart> breaker) => WorstOf(breaker.Skip(1)
        .Aggregate(breaker[0].LegsOfAll - breaker[0].Load.RunningLegs, (sum, start) => sum + start.LegsOfAll - start.Load.RunningLegs));

    private static decimal WorstOf(LegLoads extra) => extra.System.Legs.Max(leg => extra.VoltAmperesOn(leg).Value);

    private IEnumerable<VoltAmperes> Added(Func<LegLoads, VoltAmperes> of) => Moments
        .Select(moment => of(moment.Starting[0].Legs - moment.Starting[0].Running))
        .OrderDescending();

    /// <summary>How many of these fit on top of what runs, the largest first.</summary>
    private static int Fitting(VoltAmperes runs, IEnumerable<VoltAmperes> added, VoltAmperes? may)
    {
        var fit = 0;
        foreach (var one in added)
        {
            runs += VoltAmperes.Max(one, VoltAmperes.Zero);
            if (runs > may)
                return fit;
            fit++;
        }
        return fit;
    }
}
