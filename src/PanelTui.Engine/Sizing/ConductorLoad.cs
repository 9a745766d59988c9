using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What a conductor has to carry: with continuous loads at 125 %, and at 100 %.</summary>
/// <remarks>
/// Both hold the extra of the largest motor. At its terminals a conductor carries the first; where heat and grouping take from
/// its ampacity, the second: 210.19(A), 215.2(A).
/// </remarks>
public readonly record struct ConductorLoad(Amperes Required, Amperes Calculated);
