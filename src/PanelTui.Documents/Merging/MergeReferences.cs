using System.Collections.Immutable;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Reading;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Merging;

/// <summary>What refers to something by a name or a space that the other side gave to something else.</summary>
/// <remarks>A scenario that names a missing circuit is an error of reading, and is found as such.</remarks>
internal static class MergeReferences
{
    /// <summary>What the merge would make of a reference, as a sentence; null when every one is as its side meant it.</summary>
    public static string? Problem(MergedVersions versions, ScheduleReading merged) =>
        SharedNames("multiwire", MultiwireOf, versions, merged)
        ?? SharedNames("group", GroupsOf, versions, merged)
        ?? Acceptance(versions.Ancestor, versions.Ours, merged)
        ?? Acceptance(versions.Ancestor, versions.Theirs, merged);

    // A name that circuits or loads have in common.
    private static string? SharedNames(string key, Func<ScheduleReading, IEnumerable<string?>> namesOf, MergedVersions versions, ScheduleReading merged)
    {
        var (old, mine, other) = (Count(namesOf(versions.Ancestor)), Count(namesOf(versions.Ours)), Count(namesOf(versions.Theirs)));
        foreach (var (name, count) in Count(namesOf(merged)))
        {
            var (before, one, two) = (old.GetValueOrDefault(name), mine.GetValueOrDefault(name), other.GetValueOrDefault(name));
            if (before == 0 && one > 0 && two > 0 && count > Math.Max(one, two))
                return $"{key} {name} was introduced on both sides, for different members";
            if (before > 0 && ((one == 0 && two > before) || (two == 0 && one > before)))
                return $"{key} {name} is gone on one side and has a new member on the other";
        }

        return null;
    }

    private static Dictionary<string, int> Count(IEnumerable<string?> names) =>
        names.OfType<string>().GroupBy(name => name, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Count());

    private static IEnumerable<string?> MultiwireOf(ScheduleReading version) =>
        CircuitsOf(version).Select(circuit => Identity.Text(circuit, "multiwire"));

    private static IEnumerable<string?> GroupsOf(ScheduleReading version) =>
        CircuitsOf(version).SelectMany(circuit => CircuitWords.Loads(circuit)).Select(load => Identity.Text(load, "group"));

    // An accepted finding names a space; a circuit that came there from the other side was never meant.
    private static string? Acceptance(ScheduleReading was, ScheduleReading side, ScheduleReading merged)
    {
        var known = Accepted(was).Select(Likeness.Of).ToHashSet(StringComparer.Ordinal);
        var spaces = Accepted(side).Where(one => !known.Contains(Likeness.Of(one))).Select(one => Identity.Text(one, "space")).OfType<string>().ToList();
        if (spaces.Count == 0) return null;
        ImmutableArray<Identity> meant = [.. CircuitsOf(side).Select(Identity.OfCircuit)];
        var pairing = Pairing.Of(meant, [.. CircuitsOf(merged).Select(Identity.OfCircuit)]);
        foreach (var text in spaces)
        {
            if (!SpaceNumber.TryParse(text, out var space)) continue;
            var now = merged.Places.CircuitsAt([space]).Select(circuit => (int?)circuit.Ordinal).ToHashSet();
            if (!now.SetEquals(side.Places.CircuitsAt([space]).Select(circuit => pairing.After(circuit.Ordinal))))
                return $"the finding accepted at space {space} would be about another circuit";
        }

        return null;
    }

    private static ImmutableArray<YamlNode> CircuitsOf(ScheduleReading version) => Entries(version, TopFields.Circuits.Key);

    private static ImmutableArray<YamlNode> Accepted(ScheduleReading version) => Entries(version, TopFields.Accepted.Key);

    private static ImmutableArray<YamlNode> Entries(ScheduleReading version, string key) =>
        CircuitWords.Entries(KeyChanges.Value(version.Tree?.Root, key));
}
