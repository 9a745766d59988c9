using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>One circuit's way from its space to another.</summary>
public readonly record struct BalanceMove(Circuit Circuit, SpaceNumber To)
{
    public SpaceNumber From => Circuit.Space;
}

/// <summary>What is done at the panel in one go: a breaker goes to open spaces, or several change places in a ring.</summary>
/// <param name="IsRing">Whether each goes where another of them comes from, so that none can go first.</param>
public sealed record BalanceStep(ImmutableArray<BalanceMove> Moves, bool IsRing)
{
    /// <summary>Breakers of one rating, kind and number of poles may stay; their wires alone change places.</summary>
    public bool WiresAlone => IsRing && Moves.All(move => move.Circuit.Breaker == Moves[0].Circuit.Breaker
        && move.Circuit.Space.IsHalf == Moves[0].Circuit.Space.IsHalf);

    /// <summary>The steps of a plan, in an order in which every space is free when a breaker comes to it.</summary>
    public static ImmutableArray<BalanceStep> Of(Schedule schedule, IEnumerable<Hop> hops)
    {
        var left = hops.Select(hop => new BalanceMove(schedule.Circuits[hop.Ordinal], hop.To)).ToList();
        var steps = ImmutableArray.CreateBuilder<BalanceStep>();
        while (left.Count > 0) steps.Add(Next(left));
        return steps.ToImmutable();
    }

    /// <summary>What goes to an open place comes first, and frees the place of the next one; what is left are rings.</summary>
    private static BalanceStep Next(List<BalanceMove> left)
    {
        var open = left.FindIndex(move => !left.Exists(other => other != move && AreInTheWay(move, other)));
        if (open >= 0)
        {
            var alone = left[open];
            left.RemoveAt(open);
            return new BalanceStep([alone], false);
        }

        var ring = new List<BalanceMove> { left[0] };
        while (left.Find(other => !ring.Contains(other) && ring.Exists(move => AreInTheWay(move, other))) is { Circuit: not null } next) ring.Add(next);
        left.RemoveAll(ring.Contains);
        return new BalanceStep([.. ring], true);
    }

    private static bool AreInTheWay(BalanceMove move, BalanceMove other) =>
        move.Circuit.Breaker.SpacesFrom(move.To).Any(space => other.Circuit.Spaces.Any(space.Overlaps));
}
