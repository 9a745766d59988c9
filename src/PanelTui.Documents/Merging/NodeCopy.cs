using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>A value of one file, to be written into another.</summary>
internal static class NodeCopy
{
    /// <exception cref="CannotEdit">It has a name or a tag, which mean something in its own file alone.</exception>
    public static NewNode Of(YamlNode node) => node switch
    {
        { Kind: YamlKind.Alias } or { Anchor: not null } or { Tag: not null } =>
            throw new CannotEdit("a value with an anchor, an alias or a tag is not copied into another file"),
        { IsSequence: true } => new NewSequence([.. node.Items.Select(item => Of(item.Value))], CollectionStyle.Flow),
        { IsMapping: true } => new NewMapping([.. node.Pairs.Select(pair => new NewEntry(pair.Key.Value, Of(pair.Value)))], CollectionStyle.Flow),
        _ => new NewScalar(node.Value, node.IsPlain ? ScalarKind.Plain : ScalarKind.Text),
    };
}
