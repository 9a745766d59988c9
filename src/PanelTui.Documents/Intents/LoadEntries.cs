using System.Collections.Immutable;

namespace PanelTui.Documents.Intents;

/// <summary>A load as keys and texts, as the user typed them.</summary>
public sealed record LoadEntries(ImmutableArray<KeyValuePair<string, string>> Entries)
{
    /// <summary>The text of a key; nothing where the load does not have it.</summary>
    public string? TextOf(string key) =>
        Entries.Where(entry => entry.Key == key).Select(entry => entry.Value).FirstOrDefault();
}
