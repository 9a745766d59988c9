using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Puts another kind of value in the place of a key's: a list for a word, a word for a list.</summary>
internal static class Replace
{
    public static TextChange Of(YamlTree tree, YamlPath path, NewNode value)
    {
        var owner = path.Parent.Find(tree) ?? throw new CannotEdit($"there is nothing at {path.Parent}");
        var key = path.Last.Key ?? throw new CannotEdit($"{path} is no key");
        var index = owner.Pairs.TakeWhile(pair => pair.Key.Value != key).Count();
        return Edits.InOrder(
            tree,
            "",
            current => YamlEditor.RemoveEntry(current, path),
            current => YamlEditor.InsertEntryAt(current, path.Parent, index, key, value));
    }
}
