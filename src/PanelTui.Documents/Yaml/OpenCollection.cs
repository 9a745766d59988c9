using System.Collections.Immutable;

namespace PanelTui.Documents.Yaml;

/// <summary>A mapping or sequence whose end has not been read yet.</summary>
internal sealed class OpenCollection(YamlNode node)
{
    private readonly ImmutableArray<YamlPair>.Builder _pairs = ImmutableArray.CreateBuilder<YamlPair>();
    private readonly ImmutableArray<YamlItem>.Builder _items = ImmutableArray.CreateBuilder<YamlItem>();
    private YamlNode? _key;

    public void Add(YamlNode child)
    {
        child.Parent = node;
        if (node.IsSequence) _items.Add(new(child));
        else if (_key is null) _key = child;
        else AddPair(_key, child);
    }

    public YamlNode Close()
    {
        node.Pairs = _pairs.DrainToImmutable();
        node.Items = _items.DrainToImmutable();
        return node;
    }

    private void AddPair(YamlNode key, YamlNode value)
    {
        _pairs.Add(new(key, value));
        _key = null;
    }
}
