using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>A schedule with some of its breakers elsewhere.</summary>
public static class Rehung
{
    public static Schedule With(Schedule schedule, params IEnumerable<Hop> hops)
    {
        var circuits = schedule.Circuits.ToBuilder();
        foreach (var hop in hops) circuits[hop.Ordinal] = circuits[hop.Ordinal] with { Space = hop.To };
        return schedule with { Circuits = circuits.ToImmutable() };
    }
}
