using System.Collections.Immutable;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running;

/// <summary>Every limit that the schedule states for its source, against what a scenario asks.</summary>
public static class SourceBounds
{
    /// <remarks>Common practice, no source: what runs for hours is planned to 80 % of the continuous rating.</remarks>
    public static readonly Percent Planned = 80.Pct;

    /// <summary>Leg by leg, then those of all legs together.</summary>
    public static ImmutableArray<SourceBound> Of(StandbySource? source, SourceLimit limit, PerLeg<LegRun> legs)
    {
        if (source is null)
            return [];
        var onePole = source.Arrangement == SourceArrangement.InPhase;
        return
        [
            .. legs.Legs.SelectMany(leg => InWatts(leg, legs[leg].Running, limit.PerLeg)),
            .. limit.InAll is { } all ? Whole(all, legs) : [],
            .. onePole ? InAmperes(null, Sum(legs), source) : legs.Legs.SelectMany(leg => InAmperes(leg, legs[leg].Amperes, source)),
        ];
    }

    private static IEnumerable<SourceBound> InWatts(Leg leg, Watts asked, Watts? may)
    {
        if (may is not { } limit)
            yield break;
        yield return new SourceBound(BoundKind.Continuous, leg, asked.Value, May(limit), "W");
        yield return new SourceBound(BoundKind.Planning, leg, asked.Value, PlannedOf(limit), "W");
    }

    private static IEnumerable<SourceBound> Whole(Watts all, PerLeg<LegRun> legs)
    {
        var asked = legs.Values.Sum(leg => leg.Running.Value);
        yield return new SourceBound(BoundKind.InAll, null, asked, May(all), "W");
        yield return new SourceBound(BoundKind.Planning, null, asked, PlannedOf(all), "W");
    }

    private static IEnumerable<SourceBound> InAmperes(Leg? leg, Amperes asked, StandbySource source)
    {
        if (OutletConfigurations.Find(source.Outlet) is { } outlet)
            yield return new SourceBound(BoundKind.Outlet, leg, asked.Value, outlet.Rating.Value, "A");
        if (source.Ocpd is { } device)
            yield return new SourceBound(BoundKind.Breaker, leg, asked.Value, Bounded.Product(device.Value, 1), "A");
    }

    private static decimal May(Watts limit) => Bounded.Product(limit.Value, 1);

    private static decimal PlannedOf(Watts limit) => May(limit) * Planned.Value / 100;

    private static Amperes Sum(PerLeg<LegRun> legs) => legs.Values.Aggregate(Amperes.Zero, (sum, leg) => sum + leg.Amperes);
}
