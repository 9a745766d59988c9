using System.Collections.Immutable;

namespace PanelTui.Engine.Panels;

/// <summary>A circuit's new top space.</summary>
public readonly record struct Hop(int Ordinal, SpaceNumber To);

/// <summary>What it takes to hang a breaker somewhere else: it moves, and whatever sits there changes places with it.</summary>
/// <param name="Hops">The breaker itself first; empty where it stays.</param>
/// <param name="WhyNot">A sentence where it does not fit; nothing where it does.</param>
public sealed record Relocation(ImmutableArray<Hop> Hops, string? WhyNot)
{
    /// <summary>Breakers that give way take the freed spaces in their old order; one that would be torn apart does not.</summary>
    public static Relocation Of(Schedule schedule, Circuit moved, SpaceNumber to)
    {
        if (to == moved.Space) return new Relocation([], null);
        var target = moved.Breaker.SpacesFrom(to).ToList();
        if (target.Find(space => !schedule.Panel.Has(space)) is { Number: > 0 } past)
            return Refused($"{Poles(moved)} from space {to} down would need space {past}, past the last one");
        var others = schedule.Circuits.Where(circuit => circuit.Ordinal != moved.Ordinal).ToList();
        var giving = others.Where(circuit => circuit.Spaces.Any(space => target.Exists(space.Overlaps))).ToList();
        var freed = moved.Spaces.Where(space => !target.Exists(space.Overlaps)).Order().ToList();
        return giving.Count == 0
            ? new Relocation([new Hop(moved.Ordinal, to)], null)
            : Exchange(moved, to, target, [.. giving.OrderBy(circuit => circuit.Space)], freed);
    }

    private static Relocation Exchange(
        Circuit moved, SpaceNumber to, List<SpaceNumber> target, List<Circuit> giving, List<SpaceNumber> freed)
    {
        var hops = ImmutableArray.CreateBuilder<Hop>();
        hops.Add(new Hop(moved.Ordinal, to));
        foreach (var circuit in giving)
        {
            var needed = circuit.Breaker.Poles;
            if (!circuit.Spaces.All(target.Contains))
                return Refused($"{NameOf(circuit)} takes {Listed(circuit.Spaces)}: only a part of it is in the way");
            if (freed.Count < needed || !circuit.Breaker.SpacesFrom(freed[0]).SequenceEqual(freed.Take(needed)))
                return Refused($"{NameOf(circuit)} does not fit where {NameOf(moved)} comes from");
            hops.Add(new Hop(circuit.Ordinal, freed[0]));
            freed.RemoveRange(0, needed);
        }

        return new Relocation(hops.ToImmutable(), null);
    }

    private static Relocation Refused(string why) => new([], why);

    private static string Poles(Circuit circuit) => circuit.Breaker.Poles == 1 ? "one pole" : $"{circuit.Breaker.Poles} poles";

    private static string NameOf(Circuit circuit) => circuit.Name.Length == 0 ? $"the breaker at {circuit.Space}" : circuit.Name;

    private static string Listed(IEnumerable<SpaceNumber> spaces) => string.Join(" and ", spaces);
}
