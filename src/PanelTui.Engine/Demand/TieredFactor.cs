using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand;

/// <summary>A demand factor in bands: so much at the first factor, what lies above at the next.</summary>
public sealed record TieredFactor(ImmutableArray<FactorTier> Tiers)
{
    /// <summary>A line for each band that the category reaches; every leg has its share in every band.</summary>
    public IEnumerable<DemandLine> Apply(DemandCategory category)
    {
        var (whole, below) = (category.Connected.Total, VoltAmperes.Zero);
        foreach (var tier in Tiers)
        {
            if (below >= whole)
                yield break;
            yield return DemandLine.Part(
                category, Label(category, below, tier), below, VoltAmperes.Min(tier.UpTo, whole), tier.Factor);
            below = tier.UpTo;
        }
    }

    private static string Label(DemandCategory category, VoltAmperes below, FactorTier tier) =>
        below == VoltAmperes.Zero ? $"{category.Label}, first {tier.UpTo}"
        : tier.UpTo == VoltAmperes.Unlimited ? $"{category.Label}, above {below}"
        : $"{category.Label}, above {below} to {tier.UpTo}";
}
