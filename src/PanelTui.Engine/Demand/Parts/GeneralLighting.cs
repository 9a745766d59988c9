using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>General lighting of a dwelling with its general-use receptacles, small-appliance and laundry circuits.</summary>
/// <param name="Category">All of it, to go through the tiers of a method.</param>
/// <param name="Counted">The loads that count by themselves: those within the floor area do not.</param>
/// <param name="Given">How the floor area comes in.</param>
internal sealed record GeneralLighting(
    DemandCategory Category, CountedLoads Counted, ImmutableArray<DerivationStep> Given)
{
    public static readonly ImmutableArray<LoadKind> Outlets = [LoadKind.Lighting, LoadKind.Receptacle];

    public static readonly ImmutableArray<LoadKind> Kinds = [.. Outlets, LoadKind.SmallAppliance, LoadKind.Laundry];

    public static GeneralLighting Of(DemandCase demand, CountedLoads counted, CodeSection section)
    {
        var cite = section.In(demand.Edition);
        var circuits = DemandCategory.Of(
            "", demand.System, counted.Kinds(LoadKind.SmallAppliance, LoadKind.Laundry), cite);
        var outlets = counted.Kinds([.. Outlets]);
        var connected = LegSum.Of(demand.System, counted.Kinds(LoadKind.Lighting)).Total;
        if (AreaOf(demand) is not { } area || area < connected)
        {
            var asConnected = DemandCategory.Of("General lighting as connected", demand.System, outlets, cite);
            return new GeneralLighting(asConnected.With(circuits), counted, []);
        }

        var unit = DwellingLighting.UnitLoadSection.In(demand.Edition);
        return new GeneralLighting(
            ByArea(demand.System, area, outlets, cite).With(circuits),
            counted.Without(outlets, "within the floor area", unit),
            [new DerivationStep($"{demand.Basis.FloorArea} x {DwellingLighting.UnitLoad}", area.Value, "VA", unit)]);
    }

    private static VoltAmperes? AreaOf(DemandCase demand) => demand.Basis.FloorArea is { } area
        ? new VoltAmperes(Bounded.Product(area.Value, DwellingLighting.UnitLoad.Value))
        : null;

    /// <summary>On each leg in proportion to the outlets connected there, evenly where there are none.</summary>
    private static DemandCategory ByArea(
        PanelSystem system, VoltAmperes area, ImmutableArray<PlacedLoad> outlets, Citation cite)
    {
        var (connected, nothing) = (LegSum.Of(system, outlets), LegLoads.None(system));
        var whole = connected.Total;
        VoltAmperes On(Leg leg) => whole.Value == 0
            ? area / system.Legs.Length
            : new VoltAmperes(connected.VoltAmperesOn(leg).Value * area.Value / whole.Value);
        return DemandCategory.Of("General lighting by area", system, outlets, cite) with
        {
            Connected = nothing with { ToNeutral = PerLeg.Of(system, On) },
            Continuous = nothing,
            Nonlinear = nothing,
        };
    }
}
