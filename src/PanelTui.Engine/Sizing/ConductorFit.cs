using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>A conductor in its place: what its ends may carry, and what heat and grouping leave it on the way.</summary>
public sealed record ConductorFit(Conductor Conductor, Amperes AtEnds, Amperes OnTheWay)
{
    /// <summary>The smaller of the two: what a device has to protect.</summary>
    public Amperes Ampacity => AtEnds < OnTheWay ? AtEnds : OnTheWay;

    public bool Carries(ConductorLoad load) => AtEnds >= load.Required && OnTheWay >= load.Calculated;
}
