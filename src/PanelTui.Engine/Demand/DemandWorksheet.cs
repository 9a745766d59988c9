using System.Collections.Immutable;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>What a method wrote down: the loads it counted, the ones it left out, and its lines.</summary>
public sealed record DemandWorksheet(
    DemandMethodName Method, ImmutableArray<PlacedLoad> Counted, ImmutableArray<DemandLine> Lines)
{
    public ImmutableArray<LeftOutLoad> LeftOut { get; init; } = [];

    /// <summary>Figures that are no loads, such as lighting by the floor area.</summary>
    public ImmutableArray<DerivationStep> Given { get; init; } = [];

    /// <summary>The lines that the neutral follows from, where they are not those of the legs.</summary>
    /// <remarks>The optional methods are for the legs alone: their neutral goes by the standard method, 220.61.</remarks>
    public ImmutableArray<DemandLine> NeutralLines { get; init; } = Lines;

    /// <summary>Whether 430.24 has its 25 % of the largest motor beside this calculation.</summary>
    public bool AddsLargestMotor { get; init; } = true;
}
