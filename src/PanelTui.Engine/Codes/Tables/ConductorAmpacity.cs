using System.Collections.Immutable;
using PanelTui.Engine.Quantities;
using static PanelTui.Engine.Quantities.ConductorSize;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row of the ampacities: copper, then aluminum or copper-clad aluminum, at 60, 75 and 90 C.</summary>
public sealed record AmpacityRow(ConductorSize Size, ImmutableArray<int> Copper, ImmutableArray<int> Aluminum);

/// <summary>Ampacity of not more than three current-carrying conductors together, at 30 C around them.</summary>
/// <remarks>Here it ends at 500 kcmil; the sizes above are not seen in a source.</remarks>
public static class ConductorAmpacity
{
    public static readonly CodeSection Section = Nec.Section((2017, "Table 310.15(B)(16)"), (2020, "Table 310.16"));

    /// <summary>In the printed order: 14 AWG first.</summary>
    public static readonly ImmutableArray<AmpacityRow> Rows =
    [
        //       Cu 60 C  75 C  90 C   Al 60 C  75 C  90 C
        new(Awg(14), [15, 20, 25], []),
        new(Awg(12), [20, 25, 30], [15, 20, 25]),
        new(Awg(10), [30, 35, 40], [25, 30, 35]),
        new(Awg(8), [40, 50, 55], [35, 40, 45]),
        new(Awg(6), [55, 65, 75], [40, 50, 55]),
        new(Awg(4), [70, 85, 95], [55, 65, 75]),
        new(Awg(3), [85, 100, 115], [65, 75, 85]),
        new(Awg(2), [95, 115, 130], [75, 90, 100]),
        new(Awg(1), [110, 130, 145], [85, 100, 115]),
        new(Aught(1), [125, 150, 170], [100, 120, 135]),
        new(Aught(2), [145, 175, 195], [115, 135, 150]),
        new(Aught(3), [165, 200, 225], [130, 155, 175]),
        new(Aught(4), [195, 230, 260], [150, 180, 205]),
        new(OfKcmil(250), [215, 255, 290], [170, 205, 230]),
        new(OfKcmil(300), [240, 285, 320], [195, 230, 260]),
        new(OfKcmil(350), [260, 310, 350], [210, 250, 280]),
        new(OfKcmil(400), [280, 335, 380], [225, 270, 305]),
        new(OfKcmil(500), [320, 380, 430], [260, 310, 350]),
    ];

    /// <summary>Nothing for a size that the table does not have in this metal.</summary>
    public static Amperes? Find(Conductor conductor, TemperatureColumn column)
    {
        foreach (var row in Rows)
        {
            if (row.Size == conductor.Size)
                return In(row, conductor.Metal, column);
        }
        return null;
    }

    /// <summary>Every size there is in a metal, smallest first.</summary>
    public static ImmutableArray<Conductor> Sizes(ConductorMetal metal) => metal switch
    {
        ConductorMetal.Copper => Copper,
        ConductorMetal.Aluminum => Aluminum,
        ConductorMetal.CopperCladAluminum => CopperClad,
        _ => throw Unnamed.Of(metal),
    };

    private static readonly ImmutableArray<Conductor> Copper = Listed(ConductorMetal.Copper);

    private static readonly ImmutableArray<Conductor> Aluminum = Listed(ConductorMetal.Aluminum);

    private static readonly ImmutableArray<Conductor> CopperClad = Listed(ConductorMetal.CopperCladAluminum);

    private static ImmutableArray<Conductor> Listed(ConductorMetal metal) =>
        [.. Rows.Where(row => !Under(row, metal).IsEmpty).Select(row => new Conductor(row.Size, metal))];

    private static Amperes? In(AmpacityRow row, ConductorMetal metal, TemperatureColumn column)
    {
        var columns = Under(row, metal);
        return columns.IsEmpty ? null : columns[(int)column].A;
    }

    private static ImmutableArray<int> Under(AmpacityRow row, ConductorMetal metal) =>
        metal switch
        {
            ConductorMetal.Copper => row.Copper,
            ConductorMetal.Aluminum or ConductorMetal.CopperCladAluminum => row.Aluminum,
            _ => throw Unnamed.Of(metal),
        };
}
