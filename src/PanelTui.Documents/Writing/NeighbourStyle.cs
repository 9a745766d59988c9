using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Settles how a new collection is written where it is left to the neighbours: as the nearest one of its kind beside
/// it.
/// </summary>
internal static class NeighbourStyle
{
    public static NewNode ForEntry(NewNode value, YamlNode? mapping) =>
        Styled(value, mapping?.Pairs.Select(pair => pair.Value) ?? []);

    public static NewNode ForItem(NewNode value, YamlNode? list, int index) =>
        Styled(value, list?.Items.Take(index).Reverse().Concat(list.Items.Skip(index)).Select(item => item.Value) ?? []);

    private static NewNode Styled(NewNode value, IEnumerable<YamlNode> neighbours) => value switch
    {
        NewMapping map => map with { Style = Chosen(map.Style, neighbours, YamlKind.Mapping) },
        NewSequence list => list with { Style = Chosen(list.Style, neighbours, YamlKind.Sequence) },
        _ => value,
    };

    private static CollectionStyle Chosen(CollectionStyle asked, IEnumerable<YamlNode> neighbours, YamlKind kind) =>
        asked == CollectionStyle.LikeNeighbours ? First(neighbours, kind) ?? asked : asked;

    private static CollectionStyle? First(IEnumerable<YamlNode> neighbours, YamlKind kind) =>
        neighbours.FirstOrDefault(node => node.Kind == kind) is { } found
            ? found.Style == YamlStyle.Flow ? CollectionStyle.Flow : CollectionStyle.Block
            : null;
}
