using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>Whether some moves can be made by themselves: a part of a plan may need the rest of it.</summary>
public static class BalanceCheck
{
    /// <summary>One sentence where they cannot; nothing where they can.</summary>
    public static string? WhyNot(Schedule schedule, IReadOnlyCollection<Hop> hops)
    {
        var after = Rehung.With(schedule, hops);
        foreach (var hop in hops)
        {
            var moved = after.Circuits[hop.Ordinal];
            var other = after.Circuits.FirstOrDefault(other =>
                other.Ordinal != hop.Ordinal && other.Spaces.Any(space => moved.Spaces.Any(space.Overlaps)));
            if (other is not null) return $"{moved.Called} at {hop.To} needs {other.Called} to leave {other.Space} too";
        }
        var groups = Neighbours.Groups(schedule);
        return hops.Select(hop => groups[hop.Ordinal]).Where(group => group >= 0).Distinct()
            .Select(group => after.Circuits.Where(circuit => groups[circuit.Ordinal] == group).ToList())
            .Where(members => !Neighbours.AreLawful(after.Panel.System, members, [.. members.Select(circuit => circuit.Space)]))
            .Select(members => $"{string.Join(" and ", members.Select(circuit => circuit.Called))} have to move together")
            .FirstOrDefault();
    }
}
