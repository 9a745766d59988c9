using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Rooms of a dwelling whose 120 V circuits need arc-fault protection.</summary>
/// <remarks>
/// As seen in two training articles on 2023 (serveacademy.it, lecture 48886415; electricallicenserenewal.com, section 1429). The
/// rooms are the same in all three editions; bathrooms, garages, unfinished basements and outdoors are not among them.
/// </remarks>
public static class ArcFaultRooms
{
    public static readonly CodeSection Section = Nec.Section((2017, "210.12(A)"), (2023, "210.12(B)"));

    /// <summary>The largest circuit that is meant: 15 and 20 A, and in 2023 10 A, too.</summary>
    public static readonly Amperes Most = 20.A;

    public static readonly ImmutableArray<PlaceRow> All =
    [
        new("kitchen"),
        new("family-room"),
        new("dining-room"),
        new("living-room"),
        new("library"),
        new("den"),
        new("bedroom"),
        new("sunroom"),
        new("recreation-room"),
        new("closet"),
        new("hallway"),
        new("laundry"),
    ];
}
