using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Yaml;

namespace PanelTui.Presentation;

/// <summary>The loads of a circuit as one line: `motor 2 hp, start 6x, running 1500 W; lighting 90 W, continuous`.</summary>
/// <remarks>Kind and rating first, then key and value, with commas between; a semicolon before the next load.</remarks>
internal static class LoadPhrase
{
    /// <summary>Keys that stand for yes by themselves.</summary>
    public static readonly ImmutableArray<string> Flags = ["continuous", "supplementary"];

    /// <summary>The line for a circuit, in the file's own words and units.</summary>
    public static string Of(Snapshot snapshot, int ordinal)
    {
        var loads = snapshot.Places.NodeAt(Places.Loads(ordinal))?.Items ?? [];
        return string.Join("; ", loads.Select(item => Of(Aliases.Resolve(item.Value))));
    }

    /// <summary>The keys and values of each load; an empty line is no load at all.</summary>
    public static ImmutableArray<NewLoad> Parse(string line) =>
    [
        .. line.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(ParseOne),
    ];

    private static string Of(YamlNode load)
    {
        var kind = load.ValueOf("kind")?.Value ?? "";
        var first = load.ValueOf("rating") is { } rating ? $"{kind} {rating.Value}" : kind;
        var rest = load.Pairs.Where(pair => pair.Key.Value is not ("kind" or "rating")).Select(Of);
        return string.Join(", ", rest.Prepend(first));
    }

    private static string Of(YamlPair pair) => Flags.Contains(pair.Key.Value) && IsYes(pair.Value.Value)
        ? pair.Key.Value
        : $"{pair.Key.Value} {pair.Value.Value}";

    private static NewLoad ParseOne(string phrase)
    {
        var parts = phrase.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToList();
        var entries = ImmutableArray.CreateBuilder<TypedValue>();
        var (kind, rating) = Cut(parts.Count == 0 ? "" : parts[0]);
        entries.Add(new("kind", kind));
        foreach (var flag in Flags.Where(flag => rating.EndsWith(flag, StringComparison.Ordinal)))
        {
            rating = rating[..^flag.Length].TrimEnd();
            parts.Add(flag);
        }

        if (rating.Length > 0) entries.Add(new("rating", rating));
        foreach (var part in parts.Skip(1))
        {
            var (key, value) = Cut(part);
            entries.Add(new(key, value.Length == 0 && Flags.Contains(key) ? "yes" : value));
        }

        return new NewLoad(entries.ToImmutable());
    }

    private static (string Head, string Tail) Cut(string text)
    {
        var blank = text.IndexOf(' ', StringComparison.Ordinal);
        return blank < 0 ? (text, "") : (text[..blank], text[(blank + 1)..].Trim());
    }

    private static bool IsYes(string value) =>
        value.Equals("yes", StringComparison.OrdinalIgnoreCase) || value.Equals("true", StringComparison.OrdinalIgnoreCase);
}
