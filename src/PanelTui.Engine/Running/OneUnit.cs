using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running;

/// <summary>What happens to a scenario when one of two stacked 120 V units stops.</summary>
/// <param name="ByLeg">The leg that goes dark, and what stands still with it.</param>
/// <param name="Alone">The scenario on the other unit, put on both legs in phase.</param>
/// <param name="Shared">Circuits of the scenario that share a neutral: on it the currents of both legs would add.</param>
public sealed record OneUnit(ImmutableArray<DarkLeg> ByLeg, ScenarioRun Alone, ImmutableArray<SharedNeutral> Shared)
{
    /// <summary>The schedule with one of its units on both legs.</summary>
    public required Schedule Schedule { get; init; }

    /// <summary>Nothing where the source is one unit already, or has one leg.</summary>
    public static OneUnit? Of(ScenarioRun run, Schedule schedule)
    {
        if (schedule.Source is not { Arrangement: SourceArrangement.Split } source || schedule.Panel.System.Legs.Length < 2)
            return null;
        var alone = schedule with { Source = InPhase(source, schedule.Panel.System) };
        return new OneUnit(
            [.. schedule.Panel.System.Legs.Select(leg => DarkLeg.Of(leg, run))],
            run.On(alone),
            SharedNeutral.Among(run.Circuits, run.Loads))
        {
            Schedule = alone,
        };
    }

    private static StandbySource InPhase(StandbySource source, PanelSystem system)
    {
        var limit = SourceLimit.Of(source, system).PerLeg;
        var surge = source.SurgePerLeg ?? source.Surge / system.Legs.Length;
        return source with
        {
            Arrangement = SourceArrangement.InPhase,
            Continuous = limit,
            ContinuousPerLeg = limit,
            Surge = surge,
            SurgePerLeg = surge,
        };
    }
}
