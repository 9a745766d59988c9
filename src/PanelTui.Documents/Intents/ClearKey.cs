using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>
/// Takes a key out of the file, and with the last key of a section the section, save at the top and in lists.
/// </summary>
internal static class ClearKey
{
    public static TextChange Of(YamlTree tree, YamlPath path)
    {
        if (path.Find(tree) is null) return new("", []);
        var section = path.Parent;
        var isLast = !section.IsRoot && section.Last.Key is not null && section.Find(tree) is { Pairs.Length: 1 };
        return YamlEditor.RemoveEntry(tree, isLast ? section : path);
    }
}
