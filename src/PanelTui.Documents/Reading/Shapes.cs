using PanelTui.Documents.Reading.Values;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Reading;

/// <summary>What a node is, in a sentence about another thing that belongs there.</summary>
internal static class Shapes
{
    public static string Name(YamlNode node) => node switch
    {
        { IsMapping: true } => "a mapping of keys to values",
        { IsSequence: true } => "a list",
        { Value.Length: 0 } => "empty",
        _ => $"the single value {Quoted.Of(node.Value)}",
    };
}
