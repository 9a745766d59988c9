using PanelTui.Engine.Panels;

namespace PanelTui.Sheets;

/// <summary>Breakers by kind, poles and rating, and plates over what stays open.</summary>
internal static class BreakerParts
{
    public static IEnumerable<Part> Of(Schedule schedule)
    {
        var whole = schedule.Circuits.Where(circuit => !circuit.Space.IsHalf);
        var halves = schedule.Circuits.Where(circuit => circuit.Space.IsHalf).ToList();
        var open = PanelFill.Of(schedule).SpacesOpen;
        return
        [
            .. MainOf(schedule.Panel),
            .. whole.GroupBy(circuit => circuit.Breaker)
                .OrderBy(group => group.Key.Poles).ThenBy(group => group.Key.Rating.Value).ThenBy(group => group.Key.Protection)
                .Select(group => new Part("breaker", Named(group.Key), group.Count(), Remark: Spares(group))),
            .. halves.Where(circuit => circuit.Breaker.Poles == 1).GroupBy(circuit => circuit.Space.Number)
                .GroupBy(Tandem).OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new Part("breaker", group.Key, group.Count(), Remark: $"{(group.Count() == 1 ? "space" : "spaces")} {string.Join(", ", group.Select(pair => pair.Key))}")),
            .. halves.Where(circuit => circuit.Breaker.Poles > 1)
                .Select(circuit => new Part("breaker", $"{Named(circuit.Breaker)} on tandem halves", 1, Remark: $"part of a quad at {PanelWords.Spaces(circuit.Spaces)}")),
            .. open > 0 ? new[] { new Part("filler plate", "filler for an open space", open, Remark: "408.7: close unused openings") } : [],
        ];
    }

    private static IEnumerable<Part> MainOf(Panel panel) => panel.Main?.Rating is { } rating
        ? [new Part("breaker", $"main, {rating}, {panel.System.MostPoles}-pole", 1)]
        : [];

    private static string Named(Breaker breaker) =>
        $"{breaker.Poles}-pole {breaker.Rating}, {(breaker.Protection.Mark is { Length: > 0 } more ? more : "standard")}";

    private static string Tandem(IGrouping<int, Circuit> pair) =>
        $"tandem, {string.Join(" and ", pair.OrderBy(circuit => circuit.Space).Select(circuit => $"{circuit.Breaker.Rating}"))}"
        + (pair.Count() == 1 ? " and its other half" : "");

    private static string Spares(IEnumerable<Circuit> group)
    {
        var spares = group.Count(circuit => circuit.IsSpare);
        return spares == 0 ? "" : $"{spares} of them spare";
    }
}
