using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Balance;

/// <summary>Breakers that change their space, and what comes of it.</summary>
public sealed record BalancePlan
{
    /// <summary>Each circuit's new top space; empty for the layout as it is.</summary>
    public required ImmutableArray<Hop> Hops { get; init; }

    /// <summary>VA or watts on each leg, a row for each scenario that counts.</summary>
    public required ImmutableArray<ImmutableArray<decimal>> Rows { get; init; }

    /// <summary>As the engine works it out for the new layout.</summary>
    public required Percent Imbalance { get; init; }

    /// <summary>No plan of so many moves gets below this; the imbalance itself where that is proven.</summary>
    public required Percent Bound { get; init; }

    /// <summary>Whether no plan of so many moves is better.</summary>
    public required bool IsProven { get; init; }

    /// <summary>How many circuits change their space.</summary>
    public int Moves => Hops.Length;
}
