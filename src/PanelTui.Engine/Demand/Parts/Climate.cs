using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>One way to heat or cool, with its factor in a calculation that counts the larger of both.</summary>
internal sealed record ClimateShare(
    string Label, ImmutableArray<PlacedLoad> Loads, Percent Factor, CodeSection Section);

/// <summary>Heating against cooling, each as the sum of its shares: the one that loads its worst leg more counts.</summary>
/// <remarks>Heat pumps are in both.</remarks>
internal sealed record Climate(
    CountedLoads Counted, ImmutableArray<ClimateShare> Heating, ImmutableArray<ClimateShare> Cooling)
{
    private ImmutableArray<ClimateShare> Larger => Worst(Heating) >= Worst(Cooling) ? Heating : Cooling;

    public IEnumerable<DemandLine> Lines => LinesOf(Larger);

    /// <summary>The loads of the method without those that the larger sum stands for.</summary>
    public CountedLoads Chosen
    {
        get
        {
            var stays = Larger.SelectMany(share => share.Loads).ToHashSet(ReferenceEqualityComparer.Instance);
            var goes = Heating.Concat(Cooling).SelectMany(share => share.Loads).Where(load => !stays.Contains(load));
            var other = Larger == Heating ? "heating" : "cooling";
            return Counted.Without(goes, $"never with {other}, which asks for more", Noncoincident.Section.In(Counted.Edition));
        }
    }

    private VoltAmperes Worst(ImmutableArray<ClimateShare> shares)
    {
        var legs = LegSum.Of(Counted.System, LinesOf(shares).Select(line => line.Demand));
        return Counted.System.Legs.Max(legs.VoltAmperesOn);
    }

    private IEnumerable<DemandLine> LinesOf(ImmutableArray<ClimateShare> shares) =>
        from share in shares
        where share.Loads.Length > 0
        let cite = share.Section.In(Counted.Edition)
        select DemandLine.Of(DemandCategory.Of(share.Label, Counted.System, share.Loads, cite), share.Factor);
}
