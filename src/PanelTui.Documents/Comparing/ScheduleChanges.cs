using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Comparing;

/// <summary>What differs between two versions of a schedule, as facts about the panel.</summary>
public sealed record ScheduleChanges
{
    /// <summary>In the order of the file's sections; empty where the two texts are the same to the last byte.</summary>
    public required ImmutableArray<ScheduleChange> Facts { get; init; }

    /// <summary>Every figure before; null where that version cannot be read as a schedule.</summary>
    public Assessment? Before { get; init; }

    /// <summary>Every figure after; null where that version cannot be read as a schedule.</summary>
    public Assessment? After { get; init; }

    /// <summary>Findings that the later version has and the earlier had not; a circuit that moved takes its findings along.</summary>
    public ImmutableArray<Finding> Came { get; init; } = [];

    public ImmutableArray<Finding> Went { get; init; } = [];

    /// <summary>Whether the two texts are the same to the last byte.</summary>
    public bool AreNone => Facts.IsEmpty;

    /// <summary>A pure function. A version that is no YAML at all makes one fact that says so.</summary>
    public static ScheduleChanges Between(Snapshot before, Snapshot after)
    {
        if (before.Source.HasBom == after.Source.HasBom && before.Source.Text == after.Source.Text)
            return new() { Facts = [], Before = before.Assessment, After = after.Assessment };
        if ((Unreadable(before, "the earlier version") ?? Unreadable(after, "the later version")) is { } fact)
            return new() { Facts = [fact], Before = before.Assessment, After = after.Assessment };
        var (old, now) = (CircuitsOf(before), CircuitsOf(after));
        var pairing = Pairing.Of([.. old.Select(Identity.OfCircuit)], [.. now.Select(Identity.OfCircuit)]);
        var facts = FactsOf(before, after, old, now, pairing).ToImmutableArray();
        var findings = new FindingChanges(before.Assessment, after.Assessment, pairing);
        return new()
        {
            Facts = facts.IsEmpty ? [WordingChange.Of(before, after)] : facts,
            Before = before.Assessment,
            After = after.Assessment,
            Came = findings.Came,
            Went = findings.Went,
        };
    }

    private static IEnumerable<ScheduleChange> FactsOf(
        Snapshot before, Snapshot after, ImmutableArray<YamlNode> old, ImmutableArray<YamlNode> now, Pairing pairing)
    {
        var (was, top) = (before.Tree!.Root, after.Tree!.Root);
        foreach (var field in TopFields.All.Where(field => field.Shape == FieldShape.Mapping))
        {
            foreach (var fact in EntryChanges.OfSection(field.Key, KeyChanges.Value(was, field.Key), KeyChanges.Value(top, field.Key)))
                yield return fact;
        }

        var circuits = new CircuitChanges(before.Schedule?.Panel.System, after.Schedule?.Panel.System);
        foreach (var fact in circuits.Between(old, now, pairing)) yield return fact;
        foreach (var (key, name) in Lists)
        {
            foreach (var fact in EntryChanges.OfList(key, KeyChanges.Value(was, key), KeyChanges.Value(top, key), name))
                yield return fact;
        }

        foreach (var change in KeyChanges.Between(was, top, "").Where(IsOfTheFile))
            yield return new(ChangeKind.Changed, "", "", change.Text) { Key = change.Path, Before = change.Before, After = change.After };
    }

    private static readonly ImmutableArray<(string Key, Func<YamlNode, string> Name)> Lists =
        [(TopFields.Scenarios.Key, EntryChanges.Scenario), (TopFields.Accepted.Key, EntryChanges.Acceptance)];

    // The version, and keys that the format does not have; sections are told above.
    private static bool IsOfTheFile(KeyChange change) => !change.Path.Contains('.', StringComparison.Ordinal);

    private static ImmutableArray<YamlNode> CircuitsOf(Snapshot version) =>
        CircuitWords.Entries(KeyChanges.Value(version.Tree!.Root, TopFields.Circuits.Key));

    private static ScheduleChange? Unreadable(Snapshot version, string which)
    {
        var isSound = version.Schedule is not null || (version.Tree is { Root.IsMapping: true } tree && tree.Root.DescendantsAndSelf().All(node => node.Target is null));
        return isSound ? null : new(ChangeKind.Changed, "", "", $"{which} cannot be read as a schedule, so it cannot be compared");
    }
}
