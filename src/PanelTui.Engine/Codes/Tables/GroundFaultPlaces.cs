using System.Collections.Immutable;
using PanelTui.Engine.Quantities;
using static PanelTui.Engine.Codes.CodeEdition;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Where receptacles need ground-fault protection, and up to which size of circuit.</summary>
/// <remarks>
/// The list for dwellings as seen in a municipal code (ecode360.com 27891398, the list of 2014), a trade forum
/// (forums.mikeholt.com, thread 2538913, on 2020) and a contractor's article (marselectric.com, on 2023). The list for other than
/// dwellings stands from memory.
/// </remarks>
public static class GroundFaultPlaces
{
    public static readonly CodeSection Dwelling = Nec.Section("210.8(A)");

    public static readonly CodeSection OtherThanDwelling = Nec.FromMemory("210.8(B)");

    /// <summary>
    /// Outdoor outlets of dwellings, wired in or not; as seen in forums.mikeholt.com, thread 2570000.
    /// </summary>
    public static readonly CodeSection OutdoorOutlets = Nec.Section((2020, "210.8(F)"));

    /// <summary>The largest circuit that <see cref="OutdoorOutlets"/> speaks of.</summary>
    public static readonly Amperes MostOutdoors = 50.A;

    /// <summary>
    /// Up to 2017 the list for dwellings is about 125 V receptacles of 15 and 20 A; later, any rating up to 250 V.
    /// </summary>
    public static readonly Amperes MostInDwellings2017 = 20.A;

    /// <summary>
    /// Other than dwellings: single-phase receptacles up to this, three-phase ones up to twice as much. From memory.
    /// </summary>
    public static readonly Amperes MostSinglePhase = 50.A;

    public static readonly Amperes MostThreePhase = 100.A;

    /// <summary>The part of a kitchen that a receptacle for one appliance is not in.</summary>
    public const string Countertop = "countertop";

    public static readonly ImmutableArray<PlaceRow> OfDwellings =
    [
        new("bathroom"),
        new("garage"),
        new("accessory-building"),
        new("outdoors"),
        new("crawl-space"),
        new("basement", Part: "where unfinished", WholeSince: Nec2020),
        new("kitchen", Part: Countertop, WholeSince: Nec2023),
        new("sink"),
        new("boathouse"),
        new("bathtub"),
        new("laundry"),
        new("damp", Nec2020),
        new("wet", Nec2020),
    ];

    public static readonly ImmutableArray<PlaceRow> OfOthers =
    [
        new("bathroom"),
        new("kitchen"),
        new("rooftop"),
        new("outdoors"),
        new("sink"),
        new("wet"),
        new("locker-room"),
        new("garage"),
        new("service-bay"),
        new("crawl-space"),
        new("basement", Part: "where unfinished"),
        new("accessory-building", Nec2020),
        new("laundry", Nec2020),
        new("bathtub", Nec2020),
        new("damp", Nec2020),
    ];
}
