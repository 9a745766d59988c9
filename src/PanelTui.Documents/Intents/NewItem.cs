using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Adds an item to a list of the file, and the list where there is none yet.</summary>
internal static class NewItem
{
    public static TextChange Of(YamlTree tree, YamlPath list, int index, NewNode item) => list.Find(tree) is null
        ? NewKey.Of(tree, list, new NewSequence([item], CollectionStyle.Block))
        : YamlEditor.InsertItem(tree, list, index, item);
}
