using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>Whether a new breaker fits where the cursor is.</summary>
internal static class OpenSpace
{
    /// <summary>Why a breaker of so many poles cannot hang there with its top pole; nothing where it can.</summary>
    public static string? WhyNot(Schedule schedule, SpaceNumber at, int poles)
    {
        if (schedule.Circuits.FirstOrDefault(circuit => circuit.Spaces.Any(at.Overlaps)) is { } taken)
            return $"Space {at} holds {CircuitText.NameOf(taken)}";
        if (poles > schedule.Panel.System.MostPoles)
            return $"{schedule.Panel.System} has {schedule.Panel.System.MostPoles} legs: no breaker here has {poles} poles";
        var wanted = new Breaker(default, poles).SpacesFrom(at).ToList();
        if (wanted.Find(space => !schedule.Panel.Has(space)) is { Number: > 0 } past)
            return $"{poles} poles from space {at} down would need space {past}, past the last one";
        var meets = schedule.Circuits.FirstOrDefault(circuit => circuit.Spaces.Any(space => wanted.Exists(space.Overlaps)));
        return meets is null ? null : $"{poles} poles from space {at} down would meet {CircuitText.NameOf(meets)}";
    }
}
