using System.Collections.Immutable;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>A value to be written into a file: what it says and, loosely, how it should look.</summary>
public abstract record NewNode
{
    /// <summary>What must be read back.</summary>
    internal abstract Meaning Meaning { get; }

    public static implicit operator NewNode(string text) => new NewScalar(text, ScalarKind.Text);
}

/// <summary>A single value.</summary>
public sealed record NewScalar(string Text, ScalarKind Kind) : NewNode
{
    internal override ScalarMeaning Meaning =>
        Kind == ScalarKind.Plain ? ScalarMeaning.OfPlain(Text) : new(CoreType.Text, Text);
}

/// <summary>Keys with values, in the order in which they are to stand.</summary>
public sealed record NewMapping(ImmutableArray<NewEntry> Entries, CollectionStyle Style = CollectionStyle.LikeNeighbours) : NewNode
{
    internal override MappingMeaning Meaning =>
        new([.. Entries.Select(entry => new ScalarMeaning(CoreType.Text, entry.Key))], [.. Entries.Select(entry => entry.Value.Meaning)]);
}

/// <summary>Values in the order in which they are to stand.</summary>
public sealed record NewSequence(ImmutableArray<NewNode> Items, CollectionStyle Style = CollectionStyle.LikeNeighbours) : NewNode
{
    internal override SequenceMeaning Meaning => new([.. Items.Select(item => item.Meaning)]);
}

/// <summary>One entry of a new mapping.</summary>
public readonly record struct NewEntry(string Key, NewNode Value);
