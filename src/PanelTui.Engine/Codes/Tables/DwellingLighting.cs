using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>General lighting of dwellings: so much a square foot, general-use receptacles included, in three tiers.</summary>
public static class DwellingLighting
{
    /// <summary>The numbers of 2017 and 2023 were seen; the one of 2020 is from memory, and with it the whole.</summary>
    public static readonly CodeSection UnitLoadSection =
        Nec.FromMemory((2017, "220.12"), (2020, "220.14(J)"), (2023, "220.41"));

    public static readonly CodeSection TierSection = Nec.Section((2017, "Table 220.42"), (2023, "Table 220.45"));

    /// <summary>For each square foot.</summary>
    public static readonly VoltAmperes UnitLoad = 3.VA;

    /// <summary>Small-appliance and laundry circuits go in with the lighting, 220.52.</summary>
    public static readonly ImmutableArray<FactorTier> Tiers =
    [
        new(3_000.VA, 100.Pct),
        new(120_000.VA, 35.Pct),
        new(VoltAmperes.Unlimited, 25.Pct),
    ];
}
