using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>Several edits as one step of undo.</summary>
public static class Edits
{
    /// <summary>Makes each edit on the tree that the ones before it have left.</summary>
    /// <exception cref="CannotEdit">One of them cannot be made; then none is.</exception>
    public static TextChange InOrder(YamlTree tree, string title, params ReadOnlySpan<Func<YamlTree, TextChange>> edits)
    {
        var all = new TextChange(title, []);
        for (var index = 0; index < edits.Length; index++)
        {
            var next = edits[index](tree);
            all = all.Then(next);
            var isLast = index == edits.Length - 1;
            if (!isLast && !next.IsEmpty) tree = next.Result ?? YamlTree.Parse(tree.Source.WithText(next.ApplyTo(tree.Source.Text)));
        }

        return all;
    }
}
