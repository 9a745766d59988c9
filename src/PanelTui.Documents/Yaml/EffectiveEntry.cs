namespace PanelTui.Documents.Yaml;

/// <summary>One entry of a mapping after aliases and merge keys are resolved.</summary>
/// <param name="Pair">The entry as it is written, in this mapping or in the one it was merged from.</param>
/// <param name="Value">Its value, alias resolved.</param>
/// <param name="IsMerged">Whether <c>&lt;&lt;</c> brought it here.</param>
public readonly record struct EffectiveEntry(YamlPair Pair, YamlNode Value, bool IsMerged)
{
    /// <summary>The key's text; empty for a key that is a collection or an alias.</summary>
    public string Key => Pair.Key.IsScalar ? Pair.Key.Value : "";
}
