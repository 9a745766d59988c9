using System.Collections.Immutable;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Comparing;

/// <summary>The marks by which an entry of a list is found in another version of the file; <see cref="Pairing"/> weighs them.</summary>
/// <param name="All">Everything the entry says.</param>
internal sealed record Identity(string All)
{
    /// <summary>The stable name that its owner gave it to be found by; null when it has none.</summary>
    public string? Id { get; init; }

    /// <summary>What it is called; null when it is not stated.</summary>
    public string? Name { get; init; }

    /// <summary>What it does, such as the loads of a circuit; null when it is not stated.</summary>
    public string? Body { get; init; }

    /// <summary>Where it is, such as the space of a circuit; null when it is not stated or the list knows no places.</summary>
    public string? Place { get; init; }

    /// <summary>True when an equal body alone makes two entries one, if no other entry took the name.</summary>
    public bool BodySuffices { get; init; }

    /// <summary>What two entries share that may be one although it cannot be determined.</summary>
    public ImmutableArray<string> Hints { get; init; } = [];

    public static Identity OfCircuit(YamlNode circuit)
    {
        var (id, name, space) = (Text(circuit, "id"), Text(circuit, "name"), Text(circuit, "space"));
        var loads = KeyChanges.Value(circuit, "loads");
        var body = Likeness.IsNothing(loads) ? null : Likeness.Of(loads);
        return new(Likeness.Of(circuit)) { Id = id, Name = name, Body = body, Place = space, Hints = HintsOf(name, body, space) };
    }

    public static Identity OfLoad(YamlNode load)
    {
        var (kind, rating) = (Text(load, "kind"), Text(load, "rating"));
        return new(Likeness.Of(load))
        {
            Name = kind, Body = rating is null ? null : $"{kind}\n{rating}", BodySuffices = true, Hints = ["load"],
        };
    }

    public static Identity OfScenario(YamlNode scenario)
    {
        var name = Text(scenario, "name");
        var runs = Likeness.IsNothing(KeyChanges.Value(scenario, "running")) ? null : BesidesName(scenario);
        return new(Likeness.Of(scenario)) { Name = name, Body = runs, BodySuffices = true, Hints = HintsOf(name, runs, null) };
    }

    public static Identity OfAcceptance(YamlNode accepted)
    {
        var (rule, space, why) = (Text(accepted, "rule"), Text(accepted, "space"), Text(accepted, "because"));
        var name = $"{rule}\n{space}";
        var body = why is null ? null : $"{rule}\n{why}";
        return new(Likeness.Of(accepted)) { Name = name, Body = body, Place = rule, Hints = HintsOf(name, body, rule) };
    }

    /// <summary>How the entries of the list at this place of the format are recognized; null for a list that the format does not have.</summary>
    public static Func<YamlNode, Identity>? For(string pattern) => pattern switch
    {
        "circuits" => OfCircuit,
        "circuits[].loads" => OfLoad,
        "scenarios" => OfScenario,
        "accepted" => OfAcceptance,
        _ => null,
    };

    internal static string? Text(YamlNode map, string key)
    {
        foreach (var entry in Aliases.EntriesOf(map))
        {
            if (entry.Key == key && entry.Value is { IsScalar: true, Value.Length: > 0 } value) return value.Value;
        }

        return null;
    }

    private static string BesidesName(YamlNode scenario) => string.Join(
        "\n",
        Aliases.EntriesOf(scenario).Where(entry => entry.Key != "name").Select(entry => $"{entry.Key} {Likeness.Of(entry.Value)}")
            .Order(StringComparer.Ordinal));

    private static ImmutableArray<string> HintsOf(string? name, string? body, string? place) =>
    [
        .. name is null ? [] : new[] { $"name {name}" },
        .. body is null ? [] : new[] { $"body {body}" },
        .. place is null ? [] : new[] { $"place {place}" },
    ];
}
