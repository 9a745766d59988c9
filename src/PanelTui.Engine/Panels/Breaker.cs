using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>What a breaker watches besides overcurrent.</summary>
public enum Protection
{
    Standard,
    Gfci,
    Afci,
    DualFunction,
}

/// <summary>A branch breaker: its handle rating, its poles (1 to 3), and what else it watches.</summary>
public sealed record Breaker(Amperes Rating, int Poles = 1, Protection Protection = Protection.Standard)
{
    /// <summary>The spaces it takes when its top pole sits at <paramref name="top"/>: n, n + 2, n + 4.</summary>
    /// <remarks>One to three of them, whatever the poles are said to be.</remarks>
    public IEnumerable<SpaceNumber> SpacesFrom(SpaceNumber top) =>
        Enumerable.Range(0, Math.Clamp(Poles, 1, 3)).Select(top.Below);
}
