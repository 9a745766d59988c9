namespace PanelTui.Engine.Panels;

/// <summary>How full a panel is: the poles of its breakers, spares and tandem halves included, and the spaces with nothing in them.</summary>
public readonly record struct PanelFill(int PolesUsed, int SpacesOpen)
{
    public static PanelFill Of(Schedule schedule)
    {
        var taken = schedule.Circuits.SelectMany(circuit => circuit.Spaces).Where(schedule.Panel.Has).ToHashSet();
        var spaces = taken.Select(space => space.Number).Distinct().Count();
        return new PanelFill(taken.Count, schedule.Panel.Spaces - spaces);
    }
}
