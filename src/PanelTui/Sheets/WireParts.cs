using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Sheets;

/// <summary>Conductors by size, in feet of single conductor, and what of them nobody wrote down.</summary>
internal static class WireParts
{
    /// <summary>Common practice, no source.</summary>
    public const int AllowancePercent = 15;

    public static IEnumerable<Part> Of(Assessment assessment)
    {
        var runs = assessment.Branches.SelectMany(branch => OfBranch(branch, assessment.Schedule)).Concat(OfFeeder(assessment)).ToList();
        return
        [
            .. runs.GroupBy(run => (run.Wire, run.Use)).OrderBy(group => group.Key.Wire.Metal).ThenBy(group => group.Key.Wire.Size).ThenBy(group => group.Key.Use)
                .Select(group => new Part(
                    "conductor", $"{group.Key.Wire}, {group.Key.Use}", WithAllowance(group.Sum(run => run.Feet)), "ft", $"{group.Count()} {(group.Count() == 1 ? "run" : "runs")}, single conductor")),
            .. NotStated(assessment.Schedule),
        ];
    }

    private static decimal WithAllowance(decimal feet) => Math.Ceiling(feet * (100 + AllowancePercent) / 100);

    private static IEnumerable<Run> OfBranch(BranchSizing branch, Schedule schedule)
    {
        var circuit = branch.Circuit;
        if (circuit is not { Wire: { } wire, Length: { } length, IsSpare: false }) yield break;
        yield return new Run(wire, "line", length.Value * circuit.Breaker.Poles);
        if (HasNeutral(circuit) && !HasSharedNeutral(circuit, schedule)) yield return new Run(wire, "neutral", length.Value);
        if (branch.GroundingConductor is { } ground) yield return new Run(ground, "equipment grounding", length.Value);
    }

    /// <summary>A neutral that several circuits share is counted with the first of them.</summary>
    private static bool HasSharedNeutral(Circuit circuit, Schedule schedule) => circuit.Multiwire is { } name
        && schedule.Circuits.First(other => other.Multiwire == name).Ordinal != circuit.Ordinal;

    private static bool HasNeutral(Circuit circuit) => circuit.Breaker.Poles == 1
        || circuit.Loads.Any(load => load.Across == Across.LineToNeutral);

    private static IEnumerable<Run> OfFeeder(Assessment assessment)
    {
        if (assessment.Schedule.Feeder is not { Conductor: { } wire, Length: { } length }) yield break;
        yield return new Run(wire, "line", length.Value * assessment.Schedule.Panel.System.Legs.Length);
        yield return new Run(wire, "neutral", length.Value);
        if (assessment.Feeder?.GroundingConductor is { } ground) yield return new Run(ground, "equipment grounding", length.Value);
    }

    private static IEnumerable<Part> NotStated(Schedule schedule)
    {
        var without = schedule.Circuits.Where(circuit => !circuit.IsSpare && (circuit.Wire is null || circuit.Length is null)).ToList();
        if (without.Count > 0)
            yield return new Part("conductor", "wire or length not stated", without.Count, "circuits", $"spaces {PanelWords.Spaces(without.Select(circuit => circuit.Space))}");
        if (schedule.Feeder is null or { Conductor: null } or { Length: null })
            yield return new Part("conductor", "feeder: conductor or length not stated", 1, "feeder");
    }

    private sealed record Run(Conductor Wire, string Use, decimal Feet);
}
