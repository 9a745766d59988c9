using System.Collections.Immutable;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Comparing;

/// <summary>Circuits added, removed, moved and changed.</summary>
/// <param name="before">The system that the earlier spaces belong to; null where it cannot be read.</param>
/// <param name="after">The system that the later spaces belong to; null where it cannot be read.</param>
internal sealed class CircuitChanges(PanelSystem? before, PanelSystem? after)
{
    public IEnumerable<ScheduleChange> Between(ImmutableArray<YamlNode> old, ImmutableArray<YamlNode> now, Pairing pairing)
    {
        for (var index = 0; index < old.Length; index++)
        {
            if (pairing.After(index) is null)
                yield return Of(ChangeKind.Removed, old[index], $"removed ({CircuitWords.Description(old[index])})");
        }

        for (var index = 0; index < now.Length; index++)
        {
            var changes = pairing.Before(index) is { } earlier
                ? Of(old[earlier], now[index])
                : [Of(ChangeKind.Added, now[index], $"added, {CircuitWords.Description(now[index])}")];
            foreach (var change in changes) yield return change;
        }
    }

    private IEnumerable<ScheduleChange> Of(YamlNode old, YamlNode now)
    {
        // Looked up once: a circuit may have very many keys.
        var changed = Of(ChangeKind.Changed, now, "");
        foreach (var key in KeyChanges.Between(old, now, "circuits[]"))
        {
            yield return (key.Path == "circuits[].space"
                ? changed with { Kind = ChangeKind.Moved, Text = Move(old, now) }
                : changed with { Text = key.Text }) with { Key = key.Path, Before = key.Before, After = key.After };
        }

        foreach (var text in LoadChanges(CircuitWords.Loads(old), CircuitWords.Loads(now)))
            yield return changed with { Text = text, Key = "circuits[].loads" };
    }

    private string Move(YamlNode old, YamlNode now)
    {
        var (from, to) = (CircuitWords.SpacesOf(old), CircuitWords.SpacesOf(now));
        var (left, onto) = (Legs(from, before), Legs(to, after));
        var legs = left.Length == 0 || left == onto ? "" : $", from leg {left} to leg {onto}";
        return $"moved from space {string.Join(", ", from)} to {string.Join(", ", to)}{legs}";
    }

    private static string Legs(ImmutableArray<SpaceNumber> spaces, PanelSystem? system) =>
        system is null ? "" : string.Join(" and ", spaces.Select(space => system.LegOf(space)));

    private static IEnumerable<string> LoadChanges(ImmutableArray<YamlNode> old, ImmutableArray<YamlNode> now)
    {
        var pairing = Pairing.Of([.. old.Select(Identity.OfLoad)], [.. now.Select(Identity.OfLoad)]);
        for (var index = 0; index < old.Length; index++)
        {
            if (pairing.After(index) is not { } later)
            {
                yield return $"load {CircuitWords.Load(old[index])} removed";
                continue;
            }

            var load = CircuitWords.Load(old[index]);
            foreach (var key in KeyChanges.Between(old[index], now[later], "circuits[].loads[]")) yield return $"load {load}: {key.Text}";
        }

        for (var index = 0; index < now.Length; index++)
        {
            if (pairing.Before(index) is null) yield return $"load {KeyChanges.Written(now[index])} added";
        }
    }

    private static ScheduleChange Of(ChangeKind kind, YamlNode circuit, string text) =>
        new(kind, "circuits", CircuitWords.Name(circuit), text)
        {
            Spaces = CircuitWords.SpacesOf(circuit),
            Id = Identity.Text(circuit, "id"),
        };
}
