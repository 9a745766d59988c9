using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;

namespace PanelTui.Documents.Merging;

/// <summary>A value of one file, to be written into another.</summary>
internal static class NodeCopy
{
    /// <exception cref="CannotEdit">It has a name or a tag, which mean something in its own file alone.</exception>
    public static NewNode Of(YamlNode node) => node.Kind switch
    {
        _ when node.Anchor is not null || node.Tag is not null => throw NotCopied(),
        YamlKind.Alias => throw NotCopied(),
        YamlKind.Sequence => new NewSequence([.. node.Items.Select(item => Of(item.Value))], CollectionStyle.Flow),
        YamlKind.Mapping => new NewMapping([.. node.Pairs.Select(pair => new NewEntry(pair.Key.Value, Of(pair.Value)))], CollectionStyle.Flow),
        YamlKind.Scalar => new NewScalar(node.Value, node.IsPlain ? ScalarKind.Plain : ScalarKind.Text),
        _ => throw Unnamed.Of(node.Kind),
    };

    private static CannotEdit NotCopied() =>
        new("a value with an anchor, an alias or a tag is not copied into another file");
}
