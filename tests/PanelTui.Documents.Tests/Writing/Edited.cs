using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Writing;

/// <summary>Makes an edit on a text, checks that undo takes it back, and returns the text it makes.</summary>
internal static class Edited
{
    public static string Set(string text, string path, string value, ScalarKind kind = ScalarKind.Text) =>
        By(text, tree => YamlEditor.SetScalar(tree, Trees.Path(path), new(value, kind)));

    public static string Insert(string text, string path, int index, NewNode value) =>
        By(text, tree => YamlEditor.InsertItem(tree, Trees.Path(path), index, value));

    public static string Add(string text, string path, string key, NewNode value, string? after = null) =>
        By(text, tree => YamlEditor.InsertEntry(tree, Trees.Path(path), key, value, after));

    public static string Remove(string text, string path) => By(text, tree => YamlEditor.RemoveEntry(tree, Trees.Path(path)));

    public static string RemoveItem(string text, string path, int index) =>
        By(text, tree => YamlEditor.RemoveItem(tree, Trees.Path(path), index));

    public static string By(string text, Func<YamlTree, TextChange> edit)
    {
        var change = edit(Trees.Of(text));
        var after = change.ApplyTo(text);
        change.Inverse(text).ApplyTo(after).ShouldBe(text);
        return after;
    }

    /// <summary>Why an edit is not made.</summary>
    public static string Refusal(Func<string> edit) => Should.Throw<CannotEdit>(() => { edit(); }).Message;
}
