using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand;

/// <summary>A line of the worksheet: what is connected, what counts of it, by which section.</summary>
/// <remarks>What counts falls on each leg in proportion to what is connected there.</remarks>
public sealed record DemandLine(
    string Label, LegLoads Connected, LegLoads Demand, Citation Cite, ImmutableArray<SpaceNumber> Spaces)
{
    /// <summary>Nothing where the code gives a figure in place of a factor.</summary>
    public Percent? Factor { get; init; }

    /// <summary>The part of <see cref="Demand"/> that is continuous and no motor.</summary>
    public required LegLoads Continuous { get; init; }

    /// <summary>The part of <see cref="Demand"/> whose current is not a sine.</summary>
    public required LegLoads Nonlinear { get; init; }

    /// <summary>Household cooking and dryers: their neutral goes by 220.61(B)(1), not by where they sit.</summary>
    public bool IsHousehold { get; init; }

    /// <summary>A factor on all of a category.</summary>
    public static DemandLine Of(DemandCategory category, Percent factor) =>
        Part(category, category.Label, VoltAmperes.Zero, category.Connected.Total, factor);

    /// <summary>A factor on the part of a category between two bounds: every leg has its share of that part.</summary>
    public static DemandLine Part(
        DemandCategory category, string label, VoltAmperes from, VoltAmperes to, Percent factor)
    {
        var whole = category.Connected.Total;
        LegLoads Counted(LegLoads of) => of.Share(to - from, whole) * factor;
        return new DemandLine(
            label, category.Connected.Share(to - from, whole), Counted(category.Connected), category.Cite, category.Spaces)
        {
            Factor = factor,
            Continuous = Counted(category.Continuous),
            Nonlinear = Counted(category.Nonlinear),
        };
    }

    /// <summary>A figure that stands for a whole category, on the legs as given.</summary>
    public static DemandLine Figure(DemandCategory category, LegLoads demand)
    {
        var (figure, whole) = (demand.Total, category.Connected.Total);
        return new DemandLine(category.Label, category.Connected, demand, category.Cite, category.Spaces)
        {
            Continuous = category.Continuous.Share(figure, whole),
            Nonlinear = category.Nonlinear.Share(figure, whole),
        };
    }

    /// <summary>A figure that stands for a whole category, on the legs in proportion.</summary>
    public static DemandLine Figure(DemandCategory category, VoltAmperes figure) =>
        Figure(category, category.Connected.Share(figure, category.Connected.Total));

    /// <summary>What it puts between a leg and the neutral; the reduction is not allowed everywhere, 220.61(C).</summary>
    public VoltAmperes ToNeutral(Leg leg, bool reduced) =>
        !IsHousehold ? Demand.ToNeutral[leg]
        : reduced ? Demand.VoltAmperesOn(leg) * NeutralReduction.Household
        : Demand.VoltAmperesOn(leg);

    public DerivationStep Step() => new(
        Factor is { } factor && factor != Percent.Whole
            ? $"{Label}, {Shown.Rounded(Connected.Total.Value, 0, "VA")} at {Shown.Exactly(factor.Value)} %"
            : Label,
        Demand.Total.Value, "VA", Cite, Spaces);
}
