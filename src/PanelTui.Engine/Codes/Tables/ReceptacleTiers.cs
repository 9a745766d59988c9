using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Demand factors for receptacles other than in dwellings: 10 kVA in full, half of the rest.</summary>
public static class ReceptacleTiers
{
    public static readonly CodeSection Section = Nec.Section((2017, "220.44"), (2023, "220.47"));

    public static readonly ImmutableArray<FactorTier> Rows =
    [
        new(10_000.VA, 100.Pct),
        new(VoltAmperes.Unlimited, 50.Pct),
    ];
}
