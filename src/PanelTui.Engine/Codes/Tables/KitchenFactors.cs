using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Demand factors for kitchen equipment other than in dwellings, by how many units there are. From memory.</summary>
/// <remarks>The result may not fall below the two largest units together: the method sees to that.</remarks>
public static class KitchenFactors
{
    public static readonly CodeSection Section = Nec.FromMemory("Table 220.56");

    /// <summary>One unit first; the last row is six and over.</summary>
    public static readonly ImmutableArray<Percent> Rows = [100.Pct, 100.Pct, 90.Pct, 80.Pct, 70.Pct, 65.Pct];

    public static Percent For(int units) => Rows[Math.Clamp(units, 1, Rows.Length) - 1];
}
