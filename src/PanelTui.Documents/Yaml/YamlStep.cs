namespace PanelTui.Documents.Yaml;

/// <summary>One step down a tree: into a mapping by key, or into a sequence by index from 0.</summary>
public readonly record struct YamlStep
{
    private readonly int _index;

    private YamlStep(string? key, int index)
    {
        Key = key;
        _index = index;
    }

    /// <summary>The key; null for a step into a sequence.</summary>
    public string? Key { get; }

    /// <summary>The index; null for a step into a mapping.</summary>
    public int? Index => Key is null ? _index : null;

    public static implicit operator YamlStep(string key) => new(key, 0);

    public static implicit operator YamlStep(int index) => new(null, index);

    public YamlNode? From(YamlNode node) => Key is not null
        ? node.ValueOf(Key)
        : _index >= 0 && _index < node.Items.Length ? node.Items[_index].Value : null;

    /// <summary>
    /// As in a JSON pointer (RFC 6901): <c>~</c> and <c>/</c> in a key are written <c>~0</c> and <c>~1</c>.
    /// </summary>
    public override string ToString() => Key is null
        ? $"{_index}"
        : Key.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
}
