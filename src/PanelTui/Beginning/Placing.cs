using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Beginning;

/// <summary>Finds spaces for the chosen loads: those of two poles first, each other one on the leg that carries least so far.</summary>
internal static class Placing
{
    /// <summary>In the order of the spaces; what has no room has no space.</summary>
    public static ImmutableArray<(UsualLoad Load, SpaceNumber? Space)> Of(IEnumerable<UsualLoad> loads, PanelSystem system, int spaces)
    {
        var free = Enumerable.Range(1, spaces).Select(number => new SpaceNumber(number)).ToList();
        var carried = new decimal[system.Legs.Length];
        var placed = new List<(UsualLoad Load, SpaceNumber? Space)>();
        foreach (var load in loads.OrderByDescending(load => load.Poles).ThenByDescending(load => load.Amperes))
        {
            var fit = free.Where(space => SpacesOf(space, load).All(free.Contains) && load.Poles <= system.MostPoles)
                .OrderBy(space => SpacesOf(space, load).Sum(one => carried[(int)system.LegOf(one)]))
                .ThenBy(space => space)
                .Cast<SpaceNumber?>()
                .FirstOrDefault();
            placed.Add((load, fit));
            if (fit is not { } top) continue;
            foreach (var taken in SpacesOf(top, load).ToList())
            {
                free.Remove(taken);
                carried[(int)system.LegOf(taken)] += load.Amperes;
            }
        }

        return [.. placed.OrderBy(pair => pair.Space?.Number ?? int.MaxValue)];
    }

    private static IEnumerable<SpaceNumber> SpacesOf(SpaceNumber top, UsualLoad load) =>
        Enumerable.Range(0, load.Poles).Select(pole => top.Below(pole));
}
