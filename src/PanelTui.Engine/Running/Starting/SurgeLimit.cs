using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Starting;

/// <summary>What a stated surge is worth to a motor that starts.</summary>
public enum SurgeWorth
{
    NotStated,

    /// <summary>No number without a duration: it is not counted on.</summary>
    WithoutTime,

    /// <summary>Over before a motor has started: it is not counted on.</summary>
    TooShort,

    Counted,
}

/// <summary>What a source may give for the moment of a start: on each leg, and in all.</summary>
/// <remarks>Nothing where no surge is stated that is worth something.</remarks>
public sealed record SurgeLimit(SurgeWorth Worth, VoltAmperes? PerLeg, VoltAmperes? InAll)
{
    /// <summary>A surge that is over sooner starts nothing.</summary>
    /// <remarks>An article on inverter surge ratings has 0.5 s for a small pump; 0.3 to 1 s from memory.</remarks>
    public static readonly Seconds Least = new(0.5m);

    /// <remarks>
    /// As the continuous limit: a leg's own figure, or an even share of the whole; one 120 V unit gives either leg all of it.
    /// </remarks>
    public static SurgeLimit Of(StandbySource? source, PanelSystem system)
    {
        var worth = WorthOf(source);
        if (worth != SurgeWorth.Counted)
            return new SurgeLimit(worth, null, null);
        var inPhase = source!.Arrangement == SourceArrangement.InPhase;
        var share = inPhase ? source.Surge : source.Surge / system.Legs.Length;
        return new SurgeLimit(worth, source.SurgePerLeg ?? share, source.Surge ?? (inPhase ? source.SurgePerLeg : null));
    }

    private static SurgeWorth WorthOf(StandbySource? source) => source switch
    {
        null or { Surge: null, SurgePerLeg: null } => SurgeWorth.NotStated,
        { SurgeTime: null } => SurgeWorth.WithoutTime,
        { SurgeTime: { } time } when time < Least => SurgeWorth.TooShort,
        _ => SurgeWorth.Counted,
    };
}
