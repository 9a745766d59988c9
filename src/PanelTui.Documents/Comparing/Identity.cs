using System.Collections.Immutable;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Comparing;

/// <summary>What an entry of a list is recognised by in another version of the file.</summary>
/// <param name="Name">The name that its owner gave it to be found by; null where there is none.</param>
/// <param name="Marks">What else it is known by, the surest first; null where it lacks one.</param>
internal sealed record Identity(string? Name, ImmutableArray<string?> Marks)
{
    /// <summary>The marks that tell two entries to be one although each has a name of its own: a circuit renamed in its place.</summary>
    public int OutweighsName { get; init; } = -1;

    public static Identity OfCircuit(YamlNode circuit)
    {
        var (space, name) = (Text(circuit, "space"), Text(circuit, "name"));
        var isSpare = Text(circuit, "spare") is not null || string.Equals(name, "spare", StringComparison.OrdinalIgnoreCase);
        var both = space is null || name is null ? null : $"{space}\n{name}";
        return new(Text(circuit, "id"), [Likeness.Of(circuit), both, isSpare ? null : name, space]) { OutweighsName = 1 };
    }

    public static Identity OfLoad(YamlNode load, int index)
    {
        var (kind, rating) = (Text(load, "kind"), Text(load, "rating"));
        return new(null, [Likeness.Of(load), rating is null ? null : $"{kind}\n{rating}", kind, $"{index}"]);
    }

    public static Identity OfScenario(YamlNode scenario) => new(Text(scenario, "name"), [Likeness.Of(scenario)]);

    public static Identity OfAcceptance(YamlNode accepted)
    {
        var (rule, space) = (Text(accepted, "rule"), Text(accepted, "space"));
        return new(null, [Likeness.Of(accepted), $"{rule}\n{space}", rule]);
    }

    /// <summary>How the entries of the list at this place of the format are recognised; null for a list that the format does not have.</summary>
    public static Func<YamlNode, int, Identity>? For(string pattern) => pattern switch
    {
        "circuits" => (node, _) => OfCircuit(node),
        "circuits[].loads" => OfLoad,
        "scenarios" => (node, _) => OfScenario(node),
        "accepted" => (node, _) => OfAcceptance(node),
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
}
