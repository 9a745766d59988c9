using PanelTui.Documents.Intents;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>The entries of a list in a few words each: the values that tell one from another.</summary>
internal static class EntryText
{
    private static readonly string[] Distinguishing = ["kind", "rating", "space", "breaker", "name", "rule"];

    public static int CountOf(Session session, YamlPath list) => session.Now.Places.NodeAt(list)?.Items.Length ?? 0;

    /// <summary>How many there are and what they are: `2: lighting 480 W, motor 1 hp`.</summary>
    public static string Count(Session session, YamlPath list)
    {
        var count = CountOf(session, list);
        return count == 0
            ? "none"
            : $"{count}: {string.Join(", ", Enumerable.Range(0, count).Select(index => Short(session, list.Then(index))))}";
    }

    /// <summary>The values of a section that are set, in a row; of what is merely yes the key, of what is no nothing.</summary>
    public static string Values(Session session, YamlPath section)
    {
        var values = FieldPlaces.Of(section)
            .Select(place => FieldValue.At(session.Now, place.Path) switch
            {
                null or "no" or "false" => null,
                "yes" or "true" => place.Field.Key.Replace('_', ' '),
                var value => value,
            })
            .OfType<string>()
            .ToList();
        return values.Count == 0 ? "not in the file" : string.Join(", ", values);
    }

    /// <summary>The values of an entry that are not those it is told by.</summary>
    public static string Rest(Session session, YamlPath entry, params IEnumerable<string> shown) => string.Join(
        ", ",
        FieldPlaces.Of(entry)
            .Where(place => !shown.Contains(place.Field.Key))
            .Select(place => (place.Field, Value: FieldValue.At(session.Now, place.Path)))
            .Where(pair => pair.Value is not null)
            .Select(pair => $"{pair.Field.Key.Replace('_', ' ')} {pair.Value}"));

    private static string Short(Session session, YamlPath entry) => string.Join(
        ' ',
        Distinguishing.Select(key => FieldValue.At(session.Now, entry.Then(key))).OfType<string>().Take(Places.Circuits.Equals(entry.Parent) ? 3 : 2));
}
