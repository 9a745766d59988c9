using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>
/// Circuits that return over one neutral: those of one `multiwire` name, or a breaker of several poles alone.
/// </summary>
internal sealed record SharedNeutral(ImmutableArray<Circuit> Circuits)
{
    public IEnumerable<SpaceNumber> Spaces => Circuits.SelectMany(circuit => circuit.Spaces);

    /// <summary>The circuits of each name, by their spaces; a spare breaker has no neutral to share.</summary>
    public static IEnumerable<SharedNeutral> Named(RuleContext context) =>
        from circuit in context.Circuits
        where circuit is { IsSpare: false, Multiwire: not null }
        orderby circuit.Space
        group circuit by circuit.Multiwire into shared
        select new SharedNeutral([.. shared]);

    /// <summary>Those of a name that has two circuits or more.</summary>
    public static IEnumerable<SharedNeutral> Together(RuleContext context) =>
        Named(context).Where(shared => shared.Circuits.Length > 1);

    /// <summary>Breakers of several poles that share a neutral between their own poles.</summary>
    public static IEnumerable<SharedNeutral> OnOneBreaker(RuleContext context)
    {
        var together = Together(context).SelectMany(shared => shared.Circuits).ToHashSet(ReferenceEqualityComparer.Instance);
        return
            from circuit in context.Circuits
            where circuit is { IsSpare: false, Breaker.Poles: > 1 } && !together.Contains(circuit)
            where circuit.Multiwire is not null || LegsToNeutral(context, circuit) > 1
            select new SharedNeutral([circuit]);
    }

    private static int LegsToNeutral(RuleContext context, Circuit circuit) => context.Connected.Loads
        .Where(load => load.Circuit.Ordinal == circuit.Ordinal && load.Placement.IsToNeutral)
        .Select(load => load.Placement.Legs[0])
        .Distinct()
        .Count();
}
