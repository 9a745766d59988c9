using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>Every load of the panel with no factor at all; groups and scenarios play no part here.</summary>
/// <remarks>The arrangement is the source's: legs in phase add their currents on the neutral.</remarks>
public sealed record ConnectedLoad(
    CodeEdition Edition, ImmutableArray<PlacedLoad> Loads, LegLoads Legs, SourceArrangement Arrangement)
{
    public VoltAmperes Total => Legs.Total;

    /// <summary>What the neutral carries with everything on.</summary>
    public Amperes Neutral => Legs.Neutral(Arrangement);

    public Percent Imbalance => Engine.Loads.Imbalance.Of(Legs);

    public VoltAmperes VoltAmperesOn(Leg leg) => Legs.VoltAmperesOn(leg);

    public Amperes AmperesOn(Leg leg) => Legs.AmperesOn(leg);

    public static ConnectedLoad Of(Schedule schedule)
    {
        var loads = PlacedLoad.AllOf(schedule);
        var arrangement = schedule.Source?.Arrangement ?? SourceArrangement.OneUnit;
        return new ConnectedLoad(schedule.Code.Edition, loads, LegSum.Of(schedule.Panel.System, loads), arrangement);
    }
}
