using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Comparing;

/// <summary>What changed in the sections of one kind, in the scenarios and in the accepted findings.</summary>
internal static class EntryChanges
{
    /// <summary>A section such as `feeder`: added, removed, or changed key by key.</summary>
    public static IEnumerable<ScheduleChange> OfSection(string key, YamlNode? old, YamlNode? now)
    {
        if (Likeness.IsNothing(old) && Likeness.IsNothing(now)) return [];
        if (Likeness.IsNothing(old)) return [new(ChangeKind.Added, key, key, $"added, {KeyChanges.Written(now)}")];
        if (Likeness.IsNothing(now)) return [new(ChangeKind.Removed, key, key, $"removed ({KeyChanges.Written(old)})")];
        return KeyChanges.Between(old, now, key).Select(change => Changed(key, key, change));
    }

    public static IEnumerable<ScheduleChange> OfList(string key, YamlNode? old, YamlNode? now, Func<YamlNode, string> name)
    {
        var (before, after) = (CircuitWords.Entries(old), CircuitWords.Entries(now));
        var identity = Identity.For(key)!;
        var pairing = Pairing.Of([.. before.Select(identity)], [.. after.Select(identity)]);
        for (var index = 0; index < before.Length; index++)
        {
            if (pairing.After(index) is null)
                yield return new(ChangeKind.Removed, key, name(before[index]), $"removed ({KeyChanges.Written(before[index])})");
        }

        for (var index = 0; index < after.Length; index++)
        {
            if (pairing.Before(index) is not { } earlier)
            {
                yield return new(ChangeKind.Added, key, name(after[index]), $"added, {KeyChanges.Written(after[index])}");
                continue;
            }

            var subject = name(after[index]);
            foreach (var change in KeyChanges.Between(before[earlier], after[index], $"{key}[]")) yield return Changed(key, subject, change);
        }
    }

    public static string Scenario(YamlNode scenario) => $"scenario {Identity.Text(scenario, "name") ?? "without a name"}";

    public static string Acceptance(YamlNode accepted) =>
        $"accepted {Identity.Text(accepted, "rule")}{(Identity.Text(accepted, "space") is { } space ? $" (space {space})" : "")}";

    private static ScheduleChange Changed(string section, string subject, KeyChange change) =>
        new(ChangeKind.Changed, section, subject, change.Text) { Key = change.Path, Before = change.Before, After = change.After };
}
