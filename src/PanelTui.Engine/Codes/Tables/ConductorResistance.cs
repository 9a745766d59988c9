using System.Collections.Immutable;
using PanelTui.Engine.Quantities;
using static PanelTui.Engine.Quantities.ConductorSize;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row: the area in circular mils, and ohms for each 1000 ft in stranded copper and in aluminum.</summary>
public sealed record ResistanceRow(ConductorSize Size, int CircularMils, decimal Copper, decimal Aluminum);

/// <summary>Direct-current resistance at 75 C of uncoated stranded conductors, and their areas.</summary>
/// <remarks>Solid wire of 14 to 8 AWG has some 2 % less; the larger figure counts.</remarks>
public static class ConductorResistance
{
    public static readonly CodeSection Section = Nec.Section("Chapter 9 Table 8");

    private const decimal Rounding = 1.0005m;

    /// <summary>In the printed order; here from 14 AWG to 500 kcmil.</summary>
    public static readonly ImmutableArray<ResistanceRow> Rows =
    [
        //              area     Cu      Al
        new(Awg(14), 4_110, 3.14m, 5.17m),
        new(Awg(12), 6_530, 1.98m, 3.25m),
        new(Awg(10), 10_380, 1.24m, 2.04m),
        new(Awg(8), 16_510, 0.778m, 1.28m),
        new(Awg(6), 26_240, 0.491m, 0.808m),
        new(Awg(4), 41_740, 0.308m, 0.508m),
        new(Awg(3), 52_620, 0.245m, 0.403m),
        new(Awg(2), 66_360, 0.194m, 0.319m),
        new(Awg(1), 83_690, 0.154m, 0.253m),
        new(Aught(1), 105_600, 0.122m, 0.201m),
        new(Aught(2), 133_100, 0.0967m, 0.159m),
        new(Aught(3), 167_800, 0.0766m, 0.126m),
        new(Aught(4), 211_600, 0.0608m, 0.1m),
        new(OfKcmil(250), 250_000, 0.0515m, 0.0847m),
        new(OfKcmil(300), 300_000, 0.0429m, 0.0707m),
        new(OfKcmil(350), 350_000, 0.0367m, 0.0605m),
        new(OfKcmil(400), 400_000, 0.0321m, 0.0529m),
        new(OfKcmil(500), 500_000, 0.0258m, 0.0424m),
    ];

    /// <summary>Nothing for a size that is not here. Copper-clad aluminum counts as aluminum, which has a little more.</summary>
    public static OhmsPerKilofoot? Find(Conductor conductor) => RowOf(conductor.Size) is { } row
        ? new OhmsPerKilofoot(conductor.Metal switch
        {
            ConductorMetal.Copper => row.Copper,
            ConductorMetal.Aluminum or ConductorMetal.CopperCladAluminum => row.Aluminum,
            _ => throw Unnamed.Of(conductor.Metal),
        })
        : null;

    /// <summary>In circular mils; nothing for a size that is not here.</summary>
    public static int? AreaOf(ConductorSize size) => RowOf(size)?.CircularMils;

    /// <summary>The smallest size with at least so many circular mils; nothing above 500 kcmil.</summary>
    /// <remarks>Areas are printed to four digits: one that is short by less than that rounding will do.</remarks>
    public static ConductorSize? OfArea(decimal circularMils)
    {
        foreach (var row in Rows)
        {
            if (row.CircularMils * Rounding >= circularMils)
                return row.Size;
        }
        return null;
    }

    private static ResistanceRow? RowOf(ConductorSize size)
    {
        foreach (var row in Rows)
        {
            if (row.Size == size)
                return row;
        }
        return null;
    }
}
