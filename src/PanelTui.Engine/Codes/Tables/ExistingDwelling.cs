using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Loads added to an existing dwelling: one tier for all but heating and cooling, which count in full.</summary>
public static class ExistingDwelling
{
    /// <summary>No heating or cooling is added.</summary>
    public static readonly CodeSection WithoutClimate = Nec.Section("220.83(A)");

    /// <summary>Heating or cooling is added.</summary>
    public static readonly CodeSection WithClimate = Nec.Section("220.83(B)");

    public static readonly ImmutableArray<FactorTier> Tiers =
    [
        new(8_000.VA, 100.Pct),
        new(VoltAmperes.Unlimited, 40.Pct),
    ];

    /// <summary>So many separately controlled heaters count with all other loads. From memory.</summary>
    public const int Many = 4;
}
