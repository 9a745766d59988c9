using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>
/// Makes a list that is there hold the typed entries, entry by entry, so that its layout and comments stay.
/// </summary>
internal static class ListValue
{
    public static TextChange Of(YamlTree tree, YamlPath path, YamlNode list, Field field, string text)
    {
        var wanted = Typed.List(text);
        var kept = Math.Min(wanted.Length, list.Items.Length);
        var edits = new List<Func<YamlTree, TextChange>>();
        for (var index = 0; index < kept; index++)
            edits.Add(Set(path.Then(index), Typing.Scalar(field, wanted[index])));
        for (var index = list.Items.Length - 1; index >= kept; index--)
            edits.Add(Remove(path, index));
        for (var index = kept; index < wanted.Length; index++)
            edits.Add(Insert(path, index, Typing.Scalar(field, wanted[index])));
        return Edits.InOrder(tree, "", [.. edits]);
    }

    private static Func<YamlTree, TextChange> Set(YamlPath path, NewScalar value) =>
        tree => YamlEditor.SetScalar(tree, path, value);

    private static Func<YamlTree, TextChange> Remove(YamlPath list, int index) =>
        tree => YamlEditor.RemoveItem(tree, list, index);

    private static Func<YamlTree, TextChange> Insert(YamlPath list, int index, NewScalar value) =>
        tree => YamlEditor.InsertItem(tree, list, index, value);
}
