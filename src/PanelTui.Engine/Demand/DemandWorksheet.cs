using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>What a method wrote down: the loads it counted, the ones it left out, and its lines.</summary>
public sealed record DemandWorksheet(
    DemandMethodName Method, ImmutableArray<PlacedLoad> Counted, ImmutableArray<DemandLine> Lines)
{
    /// <summary>Loads that a larger one of their group stands for.</summary>
    public ImmutableArray<PlacedLoad> LeftOut { get; init; } = [];
}
