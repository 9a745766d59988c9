using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Loads;

/// <summary>
/// Circuits that return over one neutral: those of one `multiwire` name, or a breaker of several poles alone.
/// </summary>
public sealed record SharedNeutral(ImmutableArray<Circuit> Circuits)
{
    public IEnumerable<SpaceNumber> Spaces => Circuits.SelectMany(circuit => circuit.Spaces);

    /// <summary>All of them among some circuits: of one name, and on one breaker.</summary>
    public static ImmutableArray<SharedNeutral> Among(ImmutableArray<Circuit> circuits, ImmutableArray<PlacedLoad> loads) =>
        [.. Together(circuits), .. OnOneBreaker(circuits, loads)];

    /// <summary>The circuits of each name, by their spaces; a spare breaker has no neutral to share.</summary>
    internal static IEnumerable<SharedNeutral> Named(ImmutableArray<Circuit> circuits) =>
        from circuit in circuits
        where circuit is { IsSpare: false, Multiwire: not null }
        orderby circuit.Space
        group circuit by circuit.Multiwire into shared
        select new SharedNeutral([.. shared]);

    /// <summary>Those of a name that has two circuits or more.</summary>
    internal static IEnumerable<SharedNeutral> Together(ImmutableArray<Circuit> circuits) =>
        Named(circuits).Where(shared => shared.Circuits.Length > 1);

    /// <summary>Breakers of several poles that share a neutral between their own poles.</summary>
    internal static IEnumerable<SharedNeutral> OnOneBreaker(ImmutableArray<Circuit> circuits, ImmutableArray<PlacedLoad> loads)
    {
        var together = Together(circuits).SelectMany(shared => shared.Circuits).ToHashSet(ReferenceEqualityComparer.Instance);
        return
            from circuit in circuits
            where circuit is { IsSpare: false, Breaker.Poles: > 1 } && !together.Contains(circuit)
            where circuit.Multiwire is not null || LegsToNeutral(loads, circuit) > 1
            select new SharedNeutral([circuit]);
    }

    private static int LegsToNeutral(ImmutableArray<PlacedLoad> loads, Circuit circuit) => loads
        .Where(load => load.Circuit.Ordinal == circuit.Ordinal && load.Placement.IsToNeutral)
        .Select(load => load.Placement.Legs[0])
        .Distinct()
        .Count();
}
