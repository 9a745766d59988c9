using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Comparing;

/// <summary>Which findings came and which went: told apart by rule and circuits, wherever those sit and whatever the figures are.</summary>
internal sealed class FindingChanges
{
    public FindingChanges(Assessment? before, Assessment? after, Pairing pairing)
    {
        if (before is null || after is null) return;
        var old = before.Findings.GroupBy(finding => KeyOf(finding, before.Schedule, pairing.After)).ToDictionary(group => group.Key, group => group.ToList());
        var now = after.Findings.GroupBy(finding => KeyOf(finding, after.Schedule, ordinal => ordinal)).ToDictionary(group => group.Key, group => group.ToList());
        Came = Beyond(now, old);
        Went = Beyond(old, now);
    }

    public ImmutableArray<Finding> Came { get; } = [];

    public ImmutableArray<Finding> Went { get; } = [];

    private static ImmutableArray<Finding> Beyond(Dictionary<string, List<Finding>> some, Dictionary<string, List<Finding>> others) =>
        [.. some.SelectMany(group => group.Value.Skip(others.GetValueOrDefault(group.Key)?.Count ?? 0))];

    private static string KeyOf(Finding finding, Schedule schedule, Func<int, int?> later)
    {
        var circuits = schedule.Circuits
            .Where(circuit => circuit.Spaces.Any(space => finding.Spaces.Any(space.Overlaps)))
            .Select(circuit => later(circuit.Ordinal) is { } ordinal ? $"{ordinal}" : $"gone {circuit.Ordinal}")
            .Order(StringComparer.Ordinal);
        return $"{finding.Rule} {string.Join(' ', circuits)}";
    }
}
