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
        NewMapping { Style: CollectionStyle.LikeNeighbours } map when First(neighbours, YamlKind.Mapping) is { } like =>
            map with { Style = like },
        NewSequence { Style: CollectionStyle.LikeNeighbours } list when First(neighbours, YamlKind.Sequence) is { } like =>
            list with { Style = like },
        _ => value,
    };

    private static CollectionStyle? First(IEnumerable<YamlNode> neighbours, YamlKind kind) =>
        neighbours.FirstOrDefault(node => node.Kind == kind) is { } found
            ? found.Style == YamlStyle.Flow ? CollectionStyle.Flow : CollectionStyle.Block
            : null;
}
