using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>The optional calculation of a dwelling: one tier for all general loads, and factors for heating and cooling.</summary>
public static class OptionalDwelling
{
    public static readonly CodeSection GeneralSection = Nec.Section("220.82(B)");

    public static readonly ImmutableArray<FactorTier> GeneralTiers =
    [
        new(10_000.VA, 100.Pct),
        new(VoltAmperes.Unlimited, 40.Pct),
    ];

    public static readonly CodeSection CoolingSection = Nec.Section("220.82(C)(1)");

    public static readonly CodeSection HeatPumpSection = Nec.FromMemory("220.82(C)(2), (3)");

    /// <summary>Heat that comes on with a heat pump's compressor.</summary>
    public static readonly CodeSection SupplementarySection = Nec.FromMemory("220.82(C)(3)");

    public static readonly Percent Supplementary = 65.Pct;

    /// <summary>Fewer than four separately controlled heaters.</summary>
    public static readonly CodeSection FewHeatersSection = Nec.FromMemory("220.82(C)(4)");

    public static readonly Percent FewHeaters = 65.Pct;

    /// <summary>Four or more separately controlled heaters.</summary>
    public static readonly CodeSection ManyHeatersSection = Nec.Section("220.82(C)(5)");

    public static readonly Percent ManyHeaters = 40.Pct;

    public const int Many = 4;

    /// <summary>Thermal storage, and other heat that is on at its full nameplate for hours.</summary>
    public static readonly CodeSection StorageSection = Nec.FromMemory("220.82(C)(6)");

    /// <summary>The least ampacity of a feeder that this calculation is for.</summary>
    public static readonly CodeSection LeastAmpacitySection = Nec.FromMemory("220.82(A)");

    public static readonly Amperes LeastAmpacity = 100.A;
}
