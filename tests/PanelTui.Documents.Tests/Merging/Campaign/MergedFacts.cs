using System.Collections.Immutable;
using YamlDotNet.RepresentationModel;

namespace PanelTui.Documents.Tests.Merging.Campaign;

/// <summary>What a merged file says, by another reader of YAML that knows nothing of merges.</summary>
internal static class MergedFacts
{
    public static ImmutableArray<string> Of(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        var top = (YamlMappingNode)stream.Documents[0].RootNode;
        return
        [
            .. new[] { $"panel {top["panel"]["bus"]} {top["panel"]["spaces"]}" }
                .Concat(Entries(top, "circuits").Select(Circuit))
                .Concat(Entries(top, "scenarios").Select(scenario =>
                    $"scenario {scenario["name"]}: {string.Join(' ', Entries(scenario, "running").Select(id => $"{id}").Order(StringComparer.Ordinal))}"))
                .Order(StringComparer.Ordinal),
        ];
    }

    private static string Circuit(YamlNode circuit) =>
        $"circuit {Key(circuit, "id")} {Key(circuit, "space")} {Key(circuit, "name")} {Key(circuit, "breaker")} {Key(circuit, "poles", "1")} "
        + $"{Key(circuit, "wire")} {Key(circuit, "length")}"
        + string.Concat(Entries(circuit, "loads").Select(load => $" [{Key(load, "kind")} {Key(load, "rating")} {Key(load, "duty")}]").Order(StringComparer.Ordinal));

    private static string Key(YamlNode map, string key, string otherwise = "-") =>
        ((YamlMappingNode)map).Children.TryGetValue(new YamlScalarNode(key), out var value) ? $"{value}" : otherwise;

    private static IList<YamlNode> Entries(YamlNode map, string key) =>
        ((YamlMappingNode)map).Children.TryGetValue(new YamlScalarNode(key), out var value) && value is YamlSequenceNode list ? list.Children : [];
}
