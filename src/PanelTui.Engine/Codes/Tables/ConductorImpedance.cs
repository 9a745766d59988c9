using System.Collections.Immutable;
using PanelTui.Engine.Quantities;
using static PanelTui.Engine.Quantities.ConductorSize;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row in ohms for each 1000 ft: reactance, then resistance in copper and in aluminum, in PVC and in steel.</summary>
public sealed record ImpedanceRow(
    ConductorSize Size,
    decimal ReactancePvc,
    decimal ReactanceSteel,
    decimal CopperPvc,
    decimal CopperSteel,
    decimal? AluminumPvc,
    decimal? AluminumSteel);

/// <summary>Alternating-current resistance and reactance of three single conductors in a conduit, 60 Hz, 75 C.</summary>
/// <remarks>Aluminum conduit is left out: copies of the table contradict each other there.</remarks>
public static class ConductorImpedance
{
    public static readonly CodeSection Section = Nec.Section("Chapter 9 Table 9");

    /// <summary>In the printed order; here from 14 AWG to 500 kcmil.</summary>
    public static readonly ImmutableArray<ImpedanceRow> Rows =
    [
        //        X: PVC, steel   Cu: PVC, steel  Al: PVC, steel
        new(Awg(14), 0.058m, 0.073m, 3.1m, 3.1m, null, null),
        new(Awg(12), 0.054m, 0.068m, 2.0m, 2.0m, 3.2m, 3.2m),
        new(Awg(10), 0.05m, 0.063m, 1.2m, 1.2m, 2.0m, 2.0m),
        new(Awg(8), 0.052m, 0.065m, 0.78m, 0.78m, 1.3m, 1.3m),
        new(Awg(6), 0.051m, 0.064m, 0.49m, 0.49m, 0.81m, 0.81m),
        new(Awg(4), 0.048m, 0.06m, 0.31m, 0.31m, 0.51m, 0.51m),
        new(Awg(3), 0.047m, 0.059m, 0.25m, 0.25m, 0.4m, 0.4m),
        new(Awg(2), 0.045m, 0.057m, 0.19m, 0.2m, 0.32m, 0.32m),
        new(Awg(1), 0.046m, 0.057m, 0.15m, 0.16m, 0.25m, 0.25m),
        new(Aught(1), 0.044m, 0.055m, 0.12m, 0.12m, 0.2m, 0.2m),
        new(Aught(2), 0.043m, 0.054m, 0.1m, 0.1m, 0.16m, 0.16m),
        new(Aught(3), 0.042m, 0.052m, 0.077m, 0.079m, 0.13m, 0.13m),
        new(Aught(4), 0.041m, 0.051m, 0.062m, 0.063m, 0.1m, 0.1m),
        new(OfKcmil(250), 0.041m, 0.052m, 0.052m, 0.054m, 0.085m, 0.086m),
        new(OfKcmil(300), 0.041m, 0.051m, 0.044m, 0.045m, 0.071m, 0.072m),
        new(OfKcmil(350), 0.04m, 0.05m, 0.038m, 0.039m, 0.061m, 0.063m),
        new(OfKcmil(400), 0.04m, 0.049m, 0.033m, 0.035m, 0.054m, 0.055m),
        new(OfKcmil(500), 0.039m, 0.048m, 0.027m, 0.029m, 0.043m, 0.045m),
    ];

    /// <summary>Nothing for a size that is not here. Copper-clad aluminum counts as aluminum.</summary>
    public static OhmsPerKilofoot? Resistance(Conductor conductor, bool inSteel) => RowOf(conductor.Size) is { } row
        && (conductor.Metal, inSteel) switch
        {
            (ConductorMetal.Copper, false) => row.CopperPvc,
            (ConductorMetal.Copper, true) => row.CopperSteel,
            (ConductorMetal.Aluminum or ConductorMetal.CopperCladAluminum, false) => row.AluminumPvc,
            (ConductorMetal.Aluminum or ConductorMetal.CopperCladAluminum, true) => row.AluminumSteel,
            _ => throw Unnamed.Of(conductor.Metal),
        } is { } ohms
            ? new OhmsPerKilofoot(ohms)
            : null;

    /// <summary>Nothing for a size that is not here.</summary>
    public static OhmsPerKilofoot? Reactance(ConductorSize size, bool inSteel) => RowOf(size) is { } row
        ? new OhmsPerKilofoot(inSteel ? row.ReactanceSteel : row.ReactancePvc)
        : null;

    private static ImpedanceRow? RowOf(ConductorSize size)
    {
        foreach (var row in Rows)
        {
            if (row.Size == size)
                return row;
        }
        return null;
    }
}
