using System.Collections.Frozen;
using PanelTui.Engine;

namespace PanelTui.Documents.Yaml;

/// <summary>Reads the meaning off a tree, counting how often each anchor's name has been given so far.</summary>
internal sealed class MeaningReader
{
    private readonly Dictionary<string, int> _definitions = [];

    /// <summary>The nodes that are to mean something else, and what.</summary>
    public IReadOnlyDictionary<YamlNode, Func<Meaning, Meaning>> Changes { get; init; } = FrozenDictionary<YamlNode, Func<Meaning, Meaning>>.Empty;

    public Meaning Read(YamlNode node) => Changes.TryGetValue(node, out var change) ? change(ReadAsItIs(node)) : ReadAsItIs(node);

    private Meaning ReadAsItIs(YamlNode node)
    {
        var marks = MarksOf(node);
        Meaning meaning = node.Kind switch
        {
            YamlKind.Alias => new AliasMeaning(node.Value, _definitions.GetValueOrDefault(node.Value)),
            YamlKind.Sequence => new SequenceMeaning([.. node.Items.Select(item => Read(item.Value))]),
            YamlKind.Mapping => ReadMapping(node),
            YamlKind.Scalar => ReadScalar(node),
            _ => throw Unnamed.Of(node.Kind),
        };
        return meaning with { Marks = marks };
    }

    private MappingMeaning ReadMapping(YamlNode node)
    {
        var read = node.Pairs.Select(pair => (Key: Read(pair.Key), Value: Read(pair.Value))).ToArray();
        return new([.. read.Select(pair => pair.Key)], [.. read.Select(pair => pair.Value)]);
    }

    private NodeMarks? MarksOf(YamlNode node)
    {
        if (node.Anchor is null) return node.Tag is null ? null : new(node.Tag, null, 0);
        var definition = _definitions[node.Anchor] = _definitions.GetValueOrDefault(node.Anchor) + 1;
        return new(node.Tag, node.Anchor, definition);
    }

    // An explicit tag decides what a scalar is, so its text is not resolved.
    private static ScalarMeaning ReadScalar(YamlNode node) =>
        node.IsPlain ? ScalarMeaning.OfPlain(node.Value) : new(CoreType.Text, node.Value);
}
