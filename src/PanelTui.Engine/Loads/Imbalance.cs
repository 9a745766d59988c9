using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>How unevenly the legs are loaded: 100 x the largest deviation from the mean / the mean.</summary>
/// <remarks>
/// The form of NEMA MG 1 for voltages. On two legs it is half of "difference over mean", so it is named where it is shown.
/// </remarks>
public static class Imbalance
{
    public const string Definition = "largest deviation of a leg from the mean of the legs, over that mean";

    public static readonly Citation Cite = new("NEMA", null, "MG 1", Standing.Seen);

    /// <summary>No load at all, or one leg alone: 0 %.</summary>
    public static Percent Of(params IEnumerable<decimal> legs)
    {
        decimal[] values = [.. legs];
        var mean = values.Sum() / values.Length;
        return mean <= 0 ? Percent.Zero : new Percent(100 * LargestDeviation(values, mean) / mean);
    }

    public static Percent Of(LegLoads loads) =>
        Of(loads.System.Legs.Select(leg => loads.VoltAmperesOn(leg).Value));

    internal static decimal LargestDeviation(IEnumerable<decimal> legs, decimal mean) =>
        legs.Max(value => Math.Abs(value - mean));
}
