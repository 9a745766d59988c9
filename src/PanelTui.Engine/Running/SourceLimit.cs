using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running;

/// <summary>What a source may give for as long as it runs: on each leg, and in all.</summary>
/// <remarks>Nothing where the schedule states nothing.</remarks>
public readonly record struct SourceLimit(Watts? PerLeg, Watts? InAll)
{
    /// <summary>
    /// A leg's limit as stated, or an even share of what is stated in all: a set's windings carry half of its rating each. One
    /// 120 V unit on both legs has one winding, and either leg may take all of it.
    /// </summary>
    /// <remarks>Common practice, no source, but for the half: a published example splits 6000 W into 3000 W a leg.</remarks>
    public static SourceLimit Of(StandbySource? source, PanelSystem system) =>
        new(source?.ContinuousPerLeg ?? Share(source, system), source?.Continuous ?? Whole(source, system));

    /// <summary>One unit on both legs has no more in all than it has on one of them.</summary>
    private static Watts? Whole(StandbySource? source, PanelSystem system) =>
        source?.Arrangement == SourceArrangement.InPhase && system.Legs.Length > 1 ? source.ContinuousPerLeg : null;

    private static Watts? Share(StandbySource? source, PanelSystem system) => source?.Arrangement switch
    {
        null => null,
        SourceArrangement.InPhase => source.Continuous,
        SourceArrangement.Split or SourceArrangement.OneUnit => source.Continuous / system.Legs.Length,
        var arrangement => throw Unnamed.Of(arrangement),
    };
}
