using System.Collections.Immutable;

namespace PanelTui.Engine.Rules;

/// <summary>What one may look for among the rules, and why it is none.</summary>
public static class NoRules
{
    public static readonly ImmutableArray<(string What, string Reason)> All =
    [
        ("A two-pole breaker in spaces that are no neighbours",
            "A schedule cannot say so: a breaker has one space, and its other poles follow below it."),
        ("More breaker poles than the panel is marked for",
            "That takes a space twice, a tandem where none is listed, or a space that the panel has not: a rule speaks of each."),
        ("A spare breaker with loads",
            "A note on the file, not on the panel: the loads of a spare are not counted."),
        ("The sum of the breakers above the main",
            "That is so in nearly every panel and is no fault: breakers protect circuits, and loads count."),
        ("A source in parallel with the grid on one bus (705.12)",
            "Transfer equipment keeps the two apart, and no key describes a source that runs beside the grid."),
        ("The 83 % table for the whole load of a dwelling (310.12) on a partial feeder",
            "No key claims it, and no figure here uses it."),
        ("Which edition a finding rests on",
            "Each finding names its edition, its section and how well that stands."),
    ];
}
