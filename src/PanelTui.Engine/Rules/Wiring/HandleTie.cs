using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>Which breakers a handle tie can join: those that sit one below the other, or share a space.</summary>
/// <remarks>Common practice, no source: a tie is a pin or a clip over two handles side by side.</remarks>
internal static class HandleTie
{
    private const int NextRow = 2;

    public static bool Reaches(Circuit one, Circuit other) =>
        one.Spaces.Any(space => other.Spaces.Any(below => Meet(space, below)));

    private static bool Meet(SpaceNumber one, SpaceNumber other) =>
        Math.Abs((long)one.Number - other.Number) is 0 or NextRow && !one.Overlaps(other);
}
