using System.Collections.Immutable;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// What a file says, without how it is written: the measure of whether an edit did what it should and nothing else.
/// Order, duplicate keys, tags, anchors and aliases are part of it; quotes, indentation and comments are not.
/// </summary>
public abstract record Meaning
{
    /// <summary>Tag and anchor; null for none. Equal names are told apart by counting their definitions.</summary>
    public NodeMarks? Marks { get; init; }

    /// <summary>The meaning of a whole tree; that of an empty file is null in YAML's sense.</summary>
    public static Meaning Of(YamlTree tree) => tree.Root is null ? Nothing : new MeaningReader().Read(tree.Root);

    /// <summary>The meaning of a whole tree in which one node has come to mean something else.</summary>
    public static Meaning Of(YamlTree tree, YamlNode changed, Func<Meaning, Meaning> change) =>
        tree.Root is null ? change(Nothing) : Of(tree, new Dictionary<YamlNode, Func<Meaning, Meaning>> { [changed] = change });

    /// <summary>The meaning of a whole tree, which is not empty, in which several nodes have come to mean something else.</summary>
    public static Meaning Of(YamlTree tree, IReadOnlyDictionary<YamlNode, Func<Meaning, Meaning>> changes) =>
        tree.Root is null ? Nothing : new MeaningReader { Changes = changes }.Read(tree.Root);

    /// <summary>What one node says by itself.</summary>
    public static Meaning Of(YamlNode node) => new MeaningReader().Read(node);

    public static Meaning Nothing { get; } = new ScalarMeaning(CoreType.Null, "");

    public static bool Same(Meaning one, Meaning other) => one.Marks == other.Marks && (one, other) switch
    {
        (ScalarMeaning a, ScalarMeaning b) => a == b,
        (AliasMeaning a, AliasMeaning b) => a == b,
        (SequenceMeaning a, SequenceMeaning b) => SameAll(a.Items, b.Items),
        (MappingMeaning a, MappingMeaning b) => SameAll(a.Keys, b.Keys) && SameAll(a.Values, b.Values),
        _ => false,
    };

    private static bool SameAll(ImmutableArray<Meaning> some, ImmutableArray<Meaning> others) =>
        some.Length == others.Length && some.Zip(others).All(pair => Same(pair.First, pair.Second));
}

/// <summary>
/// A scalar: its type by the core schema and its text; of null the text is empty, however it is written.
/// </summary>
public sealed record ScalarMeaning(CoreType Type, string Text) : Meaning
{
    public static ScalarMeaning OfPlain(string text) =>
        ScalarText.Resolve(text) is var type and not CoreType.Null ? new(type, text) : new(CoreType.Null, "");
}

/// <summary>An alias: the name and which of the definitions of that name it repeats, counted from 1.</summary>
public sealed record AliasMeaning(string Name, int Definition) : Meaning;

public sealed record SequenceMeaning(ImmutableArray<Meaning> Items) : Meaning;

/// <summary>Keys and values, side by side in the file's order.</summary>
public sealed record MappingMeaning(ImmutableArray<Meaning> Keys, ImmutableArray<Meaning> Values) : Meaning;

/// <summary>
/// What marks a node: its tag, its anchor, and which definition of that anchor's name it is, counted from 1.
/// </summary>
public sealed record NodeMarks(string? Tag, string? Anchor, int Definition);
