using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running;

/// <summary>What can stop a source from carrying a scenario.</summary>
public enum BoundKind
{
    /// <summary>What one leg may carry for as long as it runs.</summary>
    Continuous,

    /// <summary>What all legs may carry together.</summary>
    InAll,

    /// <summary>The rating of outlet, cord and inlet, on each of their line blades.</summary>
    Outlet,

    /// <summary>The source's own breaker, on each of its poles.</summary>
    Breaker,

    /// <summary>80 % of what a leg may carry: what one plans for hours on end.</summary>
    Planning,
}

/// <summary>One limit of the source against what a scenario asks of it.</summary>
/// <remarks>The leg is nothing where the limit is one for all legs together. Both figures are in the same unit, `W` or `A`.</remarks>
public sealed record SourceBound(BoundKind Kind, Leg? Leg, decimal Asked, decimal May, string Unit)
{
    /// <summary>How much of the limit is asked for.</summary>
    public Percent Share => May > Least ? new(Math.Min(Asked / May, Most) * 100) : new(Asked > 0 ? Most * 100 : 0);

    /// <summary>What is left below the limit; below zero where it is passed.</summary>
    public decimal Spare => May - Asked;

    public bool Ok => Asked <= May;

    /// <summary>Whether passing it stops the source; the planning line is a habit, and passing it stops nothing.</summary>
    public bool IsHard => Kind != BoundKind.Planning;

    /// <summary>`leg A, continuous power`.</summary>
    public string Called => $"{(Leg is { } leg ? $"leg {leg}" : "all legs")}, {Kind switch
    {
        BoundKind.Outlet => "outlet and inlet",
        BoundKind.Breaker => "source's breaker",
        BoundKind.Planning => "80 % of it, for hours",
        BoundKind.Continuous or BoundKind.InAll => "continuous power",
        _ => throw Unnamed.Of(Kind),
    }}";

    private const decimal Most = 1_000_000;

    private const decimal Least = 0.001m;
}
