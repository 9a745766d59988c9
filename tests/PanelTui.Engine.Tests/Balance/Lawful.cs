using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Balance;

/// <summary>What a layout must keep, said again in its own words, so that the search is not its own judge.</summary>
internal static class Lawful
{
    public static bool Exists(Schedule schedule, SpaceNumber space) =>
        space.Number <= schedule.Panel.Spaces && (!space.IsHalf || schedule.Panel.TandemSpaces.Contains(space.Number));

    /// <summary>Whether circuits of one shared neutral sit side by side on different legs.</summary>
    public static bool IsKept(Schedule layout) => layout.Circuits
        .Where(circuit => circuit.Multiwire is not null)
        .GroupBy(circuit => circuit.Multiwire)
        .All(shared => AreSideBySide(layout, [.. shared.OrderBy(circuit => circuit.Space)]));

    public static bool HasNoClash(Schedule layout) => layout.Circuits.All(circuit => layout.Circuits.All(other =>
        other.Ordinal <= circuit.Ordinal || !other.Spaces.Any(space => circuit.Spaces.Any(space.Overlaps))));

    private static bool AreSideBySide(Schedule layout, Circuit[] shared)
    {
        var legs = shared.Select(circuit => layout.Panel.System.LegOf(circuit.Space)).ToList();
        return legs.Distinct().Count() == legs.Count
            && shared.Zip(shared.Skip(1)).All(pair => pair.Second.Space.Number - pair.First.Space.Number == 2);
    }
}
