using System.Collections.Immutable;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// The way from the top of a file to a value, as <c>/circuits/3/breaker</c>: it outlives the tree it was made for.
/// </summary>
public sealed class YamlPath : IEquatable<YamlPath>
{
    private YamlPath(ImmutableArray<YamlStep> steps) => Steps = steps;

    /// <summary>The path of the topmost value.</summary>
    public static YamlPath Root { get; } = new([]);

    public ImmutableArray<YamlStep> Steps { get; }

    public bool IsRoot => Steps.IsEmpty;

    /// <summary>The path one step up. The root has none.</summary>
    public YamlPath Parent => new(Steps[..^1]);

    public YamlStep Last => Steps[^1];

    public static YamlPath Of(params ReadOnlySpan<YamlStep> steps) => new([.. steps]);

    public YamlPath Then(YamlStep step) => new(Steps.Add(step));

    /// <summary>
    /// The value at this path, or null. Aliases are not followed: the path leads through what is written.
    /// </summary>
    public YamlNode? Find(YamlTree tree) =>
        Steps.Aggregate(tree.Root, (node, step) => node is null ? null : step.From(node));

    public bool Equals(YamlPath? other) => other is not null && Steps.AsSpan().SequenceEqual(other.Steps.AsSpan());

    public override bool Equals(object? obj) => Equals(obj as YamlPath);

    public override int GetHashCode() => Steps.Aggregate(17, HashCode.Combine);

    public override string ToString() => IsRoot ? "/" : string.Concat(Steps.Select(step => $"/{step}"));
}
