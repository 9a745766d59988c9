using System.Collections.Immutable;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>One value of the file: what it says and where it stands. It has no meaning for the trade yet.</summary>
public sealed class YamlNode
{
    internal YamlNode(YamlKind kind, YamlStyle style, string value = "")
    {
        Kind = kind;
        Style = style;
        Value = value;
    }

    public YamlKind Kind { get; }

    public YamlStyle Style { get; }

    /// <summary>
    /// The text of a scalar as YAML reads it, or the name that an alias refers to; empty for a collection.
    /// </summary>
    public string Value { get; }

    /// <summary>The name after <c>&amp;</c>, if there is one.</summary>
    public string? Anchor { get; internal init; }

    /// <summary>
    /// The tag with its prefix filled in (<c>!!str</c> is <c>tag:yaml.org,2002:str</c>), if one is written.
    /// </summary>
    public string? Tag { get; internal init; }

    public YamlNode? Parent { get; internal set; }

    /// <summary>The entries of a mapping in the file's order, duplicate keys included.</summary>
    public ImmutableArray<YamlPair> Pairs { get; internal set; } = [];

    /// <summary>The entries of a sequence in the file's order.</summary>
    public ImmutableArray<YamlItem> Items { get; internal set; } = [];

    /// <summary>For an alias: the node it stands for.</summary>
    public YamlNode? Target { get; internal init; }

    /// <summary>The value's own characters, without anchor, tag, trailing blanks, comments or blank lines.</summary>
    public TextSpan Span => TextSpan.Between(CoreStart, End);

    /// <summary>A scalar without quotes, to be read by the rules for plain scalars; an empty value is one.</summary>
    public bool IsPlain => Kind == YamlKind.Scalar && Style == YamlStyle.Plain && Tag is null;

    /// <summary>Whether nothing is written where the value would stand.</summary>
    public bool IsEmpty => Kind == YamlKind.Scalar && Style == YamlStyle.Plain && Value.Length == 0;

    public bool IsMapping => Kind == YamlKind.Mapping;

    public bool IsSequence => Kind == YamlKind.Sequence;

    public bool IsScalar => Kind == YamlKind.Scalar;

    /// <summary>Where the node starts, its anchor and tag included.</summary>
    internal int Start { get; set; }

    /// <summary>Where anchor and tag end, or <see cref="Start"/> when there are none.</summary>
    internal int PropsEnd { get; set; }

    internal int CoreStart { get; set; }

    internal int End { get; set; }

    /// <summary>As <see cref="End"/>, with the blank lines that a <c>|+</c> keeps as part of its value.</summary>
    internal int FullEnd { get; set; }

    /// <summary>Whether a single <c>key: value</c> in brackets makes this mapping, without braces of its own.</summary>
    internal bool IsBarePair { get; set; }

    internal IEnumerable<YamlNode> Children =>
        IsMapping ? Pairs.SelectMany(pair => new[] { pair.Key, pair.Value }) : Items.Select(item => item.Value);

    /// <summary>The value of the first entry whose key is this scalar; null where there is none.</summary>
    public YamlNode? ValueOf(string key) => PairOf(key)?.Value;

    /// <summary>The first entry whose key is this scalar; null where there is none.</summary>
    public YamlPair? PairOf(string key)
    {
        foreach (var pair in Pairs)
        {
            if (pair.Key.IsScalar && pair.Key.Value == key) return pair;
        }

        return null;
    }

    /// <summary>The node and all below it, in the file's order.</summary>
    public IEnumerable<YamlNode> DescendantsAndSelf() =>
        Children.SelectMany(child => child.DescendantsAndSelf()).Prepend(this);

    public override string ToString() => IsScalar ? Value : $"{Kind} {Span}";
}
