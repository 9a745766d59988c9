using PanelTui.Engine;
using PanelTui.Engine.Panels;

namespace PanelTui.Presentation;

/// <summary>A circuit in words: its name, and the line that tells all of it.</summary>
internal static class CircuitText
{
    public static string NameOf(Circuit circuit) => circuit.Name.Length == 0 ? $"the breaker at {circuit.Space}" : circuit.Name;

    /// <summary>`2, 4 · legs A B · Cold room · 20 A two-pole · motor 2 hp · 2880 VA`.</summary>
    public static string Line(Assessment assessment, Circuit circuit, string loads)
    {
        var system = assessment.Schedule.Panel.System;
        var spaces = string.Join(", ", circuit.Spaces);
        var legs = circuit.Breaker.Poles == 1 ? "leg" : "legs";
        var protection = circuit.Breaker.Protection.Mark is { Length: > 0 } mark ? $" {mark}" : "";
        var hangs = circuit.IsSpare ? "spare" : loads.Length == 0 ? "no load yet" : loads;
        return $"{spaces} · {legs} {string.Join(' ', circuit.Legs(system))} · {NameOf(circuit)} · "
            + $"{circuit.Breaker.Rating} {Poles(circuit.Breaker)}{protection} · {hangs}";
    }

    public static string OpenLine(Schedule schedule, SpaceNumber space) =>
        $"{space} · leg {schedule.Panel.System.LegOf(space)} · open";

    private static string Poles(Breaker breaker) => breaker.Poles switch
    {
        1 => "one-pole",
        2 => "two-pole",
        _ => "three-pole",
    };
}
