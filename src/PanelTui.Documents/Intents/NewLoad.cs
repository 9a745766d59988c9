using System.Collections.Immutable;

namespace PanelTui.Documents.Intents;

/// <summary>A load to be added, by the keys of `circuits[].loads[]`; values without text are left out.</summary>
public sealed record NewLoad(params ImmutableArray<TypedValue> Values)
{
    public static NewLoad Of(string kind, string rating = "") => new(new("kind", kind), new("rating", rating));
}
