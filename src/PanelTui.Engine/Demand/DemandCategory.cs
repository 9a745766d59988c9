using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>Loads that share a demand factor.</summary>
public sealed record DemandCategory(
    string Label, LegLoads Connected, Citation Cite, ImmutableArray<SpaceNumber> Spaces)
{
    /// <summary>The part that counts 125 % as continuous: motors do not, they have a rule of their own, 430.24.</summary>
    public required LegLoads Continuous { get; init; }

    /// <summary>The part whose current is not a sine: on a wye the neutral has to carry all of it.</summary>
    public required LegLoads Nonlinear { get; init; }

    public static DemandCategory Of(
        string label, PanelSystem system, IReadOnlyCollection<PlacedLoad> loads, Citation cite) =>
        new(label, LegSum.Of(system, loads), cite, [.. loads.Select(load => load.Circuit.Space).Distinct()])
        {
            Continuous = LegSum.Of(system, loads.Where(load => load.Load.Continuous && !load.IsMotor)),
            Nonlinear = LegSum.Of(system, loads.Where(load => load.Load.Nonlinear)),
        };

    /// <summary>Both under the label and the citation of this one.</summary>
    public DemandCategory With(DemandCategory other) => this with
    {
        Connected = Connected + other.Connected,
        Continuous = Continuous + other.Continuous,
        Nonlinear = Nonlinear + other.Nonlinear,
        Spaces = [.. Spaces.Union(other.Spaces)],
    };
}
