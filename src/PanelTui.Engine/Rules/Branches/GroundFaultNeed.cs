using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using static PanelTui.Engine.Codes.CodeEdition;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>The places for which a circuit needs ground-fault protection, and the section that says so.</summary>
internal sealed record GroundFaultNeed(ImmutableArray<string> Places, Citation Cite)
{
    private const string Outdoors = "outdoors";

    private static readonly ImmutableArray<LoadKind> SmallPlugs =
        [LoadKind.Receptacle, LoadKind.SmallAppliance, LoadKind.Laundry, LoadKind.Appliance];

    /// <summary>What may hang on a receptacle of 240 V, which the editions from 2020 on mean, too.</summary>
    private static readonly ImmutableArray<LoadKind> AllPlugs =
        [.. SmallPlugs, LoadKind.Range, LoadKind.Dryer, LoadKind.Ev];

    /// <summary>Wired in outdoors. Air conditioners are let off in 2023 up to a day that has no place here.</summary>
    private static readonly ImmutableArray<LoadKind> WiredIn = [LoadKind.Motor, LoadKind.Ev, LoadKind.Appliance];

    private static readonly ImmutableArray<LoadKind> Climate = [LoadKind.Cooling, LoadKind.HeatPump];

    /// <summary>Nothing where none of the places of the circuit asks for it.</summary>
    public static GroundFaultNeed? Of(Circuit circuit, CodeBasis code)
    {
        if (circuit.IsSpare || circuit.Places.IsEmpty)
            return null;
        var (rows, section) = code.Occupancy switch
        {
            Occupancy.Dwelling => (GroundFaultPlaces.OfDwellings, GroundFaultPlaces.Dwelling),
            Occupancy.NonDwelling => (GroundFaultPlaces.OfOthers, GroundFaultPlaces.OtherThanDwelling),
            _ => throw Unnamed.Of(code.Occupancy),
        };
        ImmutableArray<string> places =
        [
            .. from row in rows
               where row.Since <= code.Edition && circuit.Places.Contains(row.Place)
               where HasReceptacle(circuit, code) && !IsOneApplianceOffTheCounter(circuit, row, code.Edition)
               select row.In(code.Edition),
        ];
        if (!places.IsEmpty)
            return new GroundFaultNeed(places, section.In(code.Edition));
        return IsWiredInOutdoors(circuit, code)
            ? new GroundFaultNeed([Outdoors], GroundFaultPlaces.OutdoorOutlets.In(code.Edition))
            : null;
    }

    private static bool HasReceptacle(Circuit circuit, CodeBasis code)
    {
        var (rating, poles) = (circuit.Breaker.Rating, circuit.Breaker.Poles);
        return (code.Occupancy, code.Edition) switch
        {
            (Occupancy.NonDwelling, _) => rating <= MostInOthers(poles) && Has(circuit, AllPlugs),
            (Occupancy.Dwelling, Nec2017) =>
                poles == 1 && rating <= GroundFaultPlaces.MostInDwellings2017 && Has(circuit, SmallPlugs),
            (Occupancy.Dwelling, Nec2020 or Nec2023) => Has(circuit, AllPlugs),
            (Occupancy.Dwelling, _) => throw Unnamed.Of(code.Edition),
            _ => throw Unnamed.Of(code.Occupancy),
        };
    }

    private static Amperes MostInOthers(int poles) =>
        poles == 3 ? GroundFaultPlaces.MostThreePhase : GroundFaultPlaces.MostSinglePhase;

    /// <summary>A circuit without loads has its outlets all the same.</summary>
    private static bool Has(Circuit circuit, ImmutableArray<LoadKind> kinds) =>
        circuit.Loads.IsEmpty || circuit.Loads.Any(load => kinds.Contains(load.Kind));

    private static bool IsOneApplianceOffTheCounter(Circuit circuit, PlaceRow row, CodeEdition edition) =>
        row.Part == GroundFaultPlaces.Countertop && row.IsPartIn(edition)
        && !circuit.Loads.IsEmpty
        && !circuit.Loads.Any(load => load.Kind is LoadKind.Receptacle or LoadKind.SmallAppliance);

    private static bool IsWiredInOutdoors(Circuit circuit, CodeBasis code) =>
        code.Occupancy == Occupancy.Dwelling && circuit.Places.Contains(Outdoors)
        && circuit.Breaker.Rating <= GroundFaultPlaces.MostOutdoors
        && circuit.Loads.Any(load => WiredInAsOf(code.Edition).Contains(load.Kind));

    private static ImmutableArray<LoadKind> WiredInAsOf(CodeEdition edition) => edition switch
    {
        Nec2017 => [],
        Nec2020 => [.. WiredIn, .. Climate],
        Nec2023 => WiredIn,
        _ => throw Unnamed.Of(edition),
    };
}
