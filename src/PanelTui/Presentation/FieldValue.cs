using PanelTui.Documents;
using PanelTui.Documents.Yaml;

namespace PanelTui.Presentation;

/// <summary>What the file says at a key, in its own words.</summary>
internal static class FieldValue
{
    /// <summary>The value, or a list with commas between its entries; nothing where the key is not there, or has keys of its own.</summary>
    public static string? At(Snapshot snapshot, YamlPath path) => snapshot.Places.NodeAt(path) switch
    {
        { IsScalar: true } scalar => scalar.Value,
        { IsSequence: true } list when list.Items.All(item => item.Value.IsScalar) => string.Join(", ", list.Items.Select(item => item.Value.Value)),
        _ => null,
    };

    public static bool IsThere(Snapshot snapshot, YamlPath path) => snapshot.Places.NodeAt(path) is not null;
}
