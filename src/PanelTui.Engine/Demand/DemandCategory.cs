using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>Loads that share a demand factor.</summary>
public sealed record DemandCategory(string Label, PanelSystem System, ImmutableArray<PlacedLoad> Loads, Citation Cite)
{
    public LegLoads Connected => LegSum.Of(System, Loads);

    /// <summary>The part that counts 125 % as continuous: motors do not, they have a rule of their own, 430.24.</summary>
    public LegLoads Continuous => LegSum.Of(System, Loads.Where(load => load.Load.Continuous && !load.IsMotor));

    public ImmutableArray<SpaceNumber> Spaces => [.. Loads.Select(load => load.Circuit.Space).Distinct()];
}
