using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row of the ambient corrections: up to this temperature, the factors for 60, 75 and 90 C insulation.</summary>
public sealed record AmbientRow(Celsius UpTo, ImmutableArray<decimal?> Factors);

/// <summary>What the heat around a conductor leaves of its ampacity, on the basis of 30 C.</summary>
/// <remarks>The number that the table has in 2020 is from memory.</remarks>
public static class AmbientCorrection
{
    public static readonly CodeSection Section =
        Nec.Section((2017, "Table 310.15(B)(2)(a)"), (2020, "Table 310.15(B)(1)"), (2023, "Table 310.15(B)(1)(1)"));

    /// <summary>What the ampacities are printed for.</summary>
    public static readonly Celsius Basis = 30.DegC;

    /// <summary>In the printed order, coldest first; nothing where the insulation must not be that warm.</summary>
    public static readonly ImmutableArray<AmbientRow> Rows =
    [
        //        up to  60 C   75 C   90 C
        new(10.DegC, [1.29m, 1.20m, 1.15m]),
        new(15.DegC, [1.22m, 1.15m, 1.12m]),
        new(20.DegC, [1.15m, 1.11m, 1.08m]),
        new(25.DegC, [1.08m, 1.05m, 1.04m]),
        new(30.DegC, [1.00m, 1.00m, 1.00m]),
        new(35.DegC, [0.91m, 0.94m, 0.96m]),
        new(40.DegC, [0.82m, 0.88m, 0.91m]),
        new(45.DegC, [0.71m, 0.82m, 0.87m]),
        new(50.DegC, [0.58m, 0.75m, 0.82m]),
        new(55.DegC, [0.41m, 0.67m, 0.76m]),
        new(60.DegC, [null, 0.58m, 0.71m]),
        new(65.DegC, [null, 0.47m, 0.65m]),
        new(70.DegC, [null, 0.33m, 0.58m]),
        new(75.DegC, [null, null, 0.50m]),
        new(80.DegC, [null, null, 0.41m]),
        new(85.DegC, [null, null, 0.29m]),
    ];

    /// <summary>Nothing where the insulation must not be used in that heat.</summary>
    public static decimal? Find(Celsius ambient, TemperatureColumn insulation)
    {
        foreach (var row in Rows)
        {
            if (ambient <= row.UpTo)
                return row.Factors[(int)insulation];
        }
        return null;
    }
}
