using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Comparing;

/// <summary>One key of a mapping whose value says something else.</summary>
/// <param name="Path">As the format's pages name it; of a key that the format does not have, in the same form.</param>
/// <param name="Text">What happened: `breaker 20 A, was 15 A`.</param>
internal sealed record KeyChange(string Path, string Text, string? Before, string? After);

/// <summary>Compares two mappings key by key, in the order of the format; lists of mappings are left to others.</summary>
internal static class KeyChanges
{
    /// <param name="before">The mapping as it was; null where there was none.</param>
    /// <param name="after">The mapping as it is; null where there is none.</param>
    /// <param name="owner">Its place in the format, such as `circuits[]`.</param>
    public static IEnumerable<KeyChange> Between(YamlNode? before, YamlNode? after, string owner)
    {
        var fields = FieldBook.Of(owner);
        var (was, now) = (Values(before), Values(after));
        foreach (var field in fields)
        {
            foreach (var change in OfField(was.GetValueOrDefault(field.Key), now.GetValueOrDefault(field.Key), field)) yield return change;
        }

        var others = was.Keys.Union(now.Keys).Where(key => fields.All(field => field.Key != key));
        foreach (var key in others)
        {
            if (OfValue(key, $"{owner}.{key}".TrimStart('.'), was.GetValueOrDefault(key), now.GetValueOrDefault(key)) is { } change)
                yield return change;
        }
    }

    public static YamlNode? Value(YamlNode? map, string key) =>
        map is null ? null : Aliases.ValueOf(map, key);

    /// <summary>A value on one line, as the file says it; null for none.</summary>
    public static string? Written(YamlNode? value) => value switch
    {
        null => null,
        _ when Likeness.IsNull(value) => null,
        { IsSequence: true } => string.Join(", ", Aliases.ItemsOf(value).Select(Written)),
        { IsMapping: true } => string.Join(", ", Aliases.EntriesOf(value).Select(entry => $"{entry.Key} {Written(entry.Value)}")),
        _ => value.Value,
    };

    private static IEnumerable<KeyChange> OfField(YamlNode? before, YamlNode? after, Field field)
    {
        if (field.Shape == FieldShape.Mapping)
        {
            foreach (var below in Between(before, after, field.Path))
                yield return below with { Text = $"{field.Key} {below.Text}" };
        }
        else if (field.Shape != FieldShape.ListOfMappings && !MeanTheSame(before, after, field)
            && OfValue(field.Key, field.Path, before, after) is { } change)
        {
            yield return change;
        }
    }

    private static KeyChange? OfValue(string key, string path, YamlNode? before, YamlNode? after)
    {
        if (Likeness.Same(before, after)) return null;
        var (old, now) = (Written(before), Written(after));
        if (old == now) return null;
        var label = key.Replace('_', ' ');
        var text = (old, now) switch
        {
            (null, _) => $"{label} {now}, was not stated",
            (_, null) => $"{label} no longer stated, was {old}",
            _ => $"{label} {now}, was {old}",
        };
        return new(path, text, old, now);
    }

    private static bool MeanTheSame(YamlNode? before, YamlNode? after, Field field)
    {
        var (old, now) = (Written(before) ?? field.Default, Written(after) ?? field.Default);
        if (old is null || now is null) return old == now;
        return field.Shape == FieldShape.Value ? field.Same(old, now) : SameList(field, old, now);
    }

    // The names in a list say the same in any order; the hours of a day do not.
    private static bool SameList(Field field, string old, string now)
    {
        if (field.Path == EnergyFields.Hourly.Path) return old == now;
        return Typed.List(old).ToHashSet(StringComparer.Ordinal).SetEquals(Typed.List(now));
    }

    // In the order of the file.
    private static OrderedDictionary<string, YamlNode> Values(YamlNode? map)
    {
        var values = new OrderedDictionary<string, YamlNode>(StringComparer.Ordinal);
        foreach (var entry in map is null ? [] : Aliases.EntriesOf(map).Where(entry => entry.Key.Length > 0)) values.TryAdd(entry.Key, entry.Value);
        return values;
    }
}
