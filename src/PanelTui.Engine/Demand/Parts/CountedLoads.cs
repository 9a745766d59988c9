using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>The loads that a method goes on with, and those that something else stands for.</summary>
internal sealed record CountedLoads(
    PanelSystem System, CodeEdition Edition, ImmutableArray<PlacedLoad> Loads, ImmutableArray<LeftOutLoad> LeftOut)
{
    /// <summary>Every load but the smaller ones of each group.</summary>
    public static CountedLoads Of(DemandCase demand) =>
        new CountedLoads(demand.System, demand.Edition, demand.Loads, []).LargestOfEachGroup();

    public ImmutableArray<PlacedLoad> Kinds(params ReadOnlySpan<LoadKind> kinds)
    {
        var found = ImmutableArray.CreateBuilder<PlacedLoad>();
        foreach (var load in Loads)
        {
            if (kinds.Contains(load.Load.Kind))
                found.Add(load);
        }
        return found.ToImmutable();
    }

    public CountedLoads Without(IEnumerable<PlacedLoad> loads, string why, Citation cite)
    {
        var gone = loads.ToHashSet(ReferenceEqualityComparer.Instance);
        return gone.Count == 0 ? this : this with
        {
            Loads = [.. Loads.Where(load => !gone.Contains(load))],
            LeftOut = [.. LeftOut, .. Loads.Where(gone.Contains).Select(load => new LeftOutLoad(load, why, cite))],
        };
    }

    /// <summary>Heating and cooling never run together, 220.60: what asks for less is left out. Heat pumps do both.</summary>
    public CountedLoads HeatingOrCooling()
    {
        var (heat, cold) = (Kinds(LoadKind.SpaceHeat), Kinds(LoadKind.Cooling));
        if (heat.Length == 0 || cold.Length == 0)
            return this;
        var compared = new Alternatives(this, [.. heat, .. cold]);
        var (less, other) = compared.Asks(heat) >= compared.Asks(cold) ? (cold, "heating") : (heat, "cooling");
        return Without(less, $"never with {other}, which asks for more", Noncoincident.Section.In(Edition));
    }

    /// <summary>Of each group, only the load that asks for most, the first of equals.</summary>
    public CountedLoads LargestOfEachGroup()
    {
        if (Loads.All(load => load.Load.Group is null))
            return this;
        var compared = new Alternatives(this, [.. Loads.Where(load => load.Load.Group is not null)]);
        return Loads.Where(load => load.Load.Group is not null)
            .GroupBy(load => load.Load.Group!, StringComparer.Ordinal)
            .Aggregate(this, (counted, group) => counted.Without(
                group.Except([group.MaxBy(load => compared.Asks([load]))!], ReferenceEqualityComparer.Instance)
                    .Cast<PlacedLoad>(),
                $"never with the larger of group {group.Key}",
                Noncoincident.Section.In(Edition)));
    }
}
