using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Intents;

/// <summary>A circuit to be added, by the keys of `circuits[]`; values without text are left out.</summary>
/// <remarks>Without an `id` it gets one made of its name, so that moving it later loses no history.</remarks>
public sealed record NewCircuit(ImmutableArray<TypedValue> Values, ImmutableArray<NewLoad> Loads)
{
    public static NewCircuit Of(
        SpaceNumber space, string breaker, string name = "", params ImmutableArray<NewLoad> loads) =>
        new([new("space", $"{space}"), new("name", name), new("breaker", breaker)], loads);

    public NewCircuit With(string key, string text) =>
        this with { Values = Values.RemoveAll(value => value.Key == key).Add(new(key, text)) };

    internal string TextOf(string key) => Values.FirstOrDefault(value => value.Key == key).Text?.Trim() ?? "";
}
