using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand;

/// <summary>A line of the worksheet: what is connected, at which factor, by which section.</summary>
/// <remarks>The factor falls on each leg in proportion to what is connected there.</remarks>
public sealed record DemandLine(
    string Label, LegLoads Connected, Percent Factor, Citation Cite, ImmutableArray<SpaceNumber> Spaces)
{
    /// <summary>The part of <see cref="Connected"/> that is continuous and no motor.</summary>
    public required LegLoads Continuous { get; init; }

    public LegLoads Demand => Connected * Factor;

    public static DemandLine Of(DemandCategory category, Percent factor) =>
        new(category.Label, category.Connected, factor, category.Cite, category.Spaces)
        {
            Continuous = category.Continuous,
        };

    public DerivationStep Step() => new(
        Factor == Percent.Whole ? Label : $"{Label}, {Connected.Total} at {Shown.Rounded(Factor.Value, 1)} %",
        Demand.Total.Value, "VA", Cite, Spaces);
}
