using System.Collections.Immutable;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>A value of the file as one to be written anew: it says the same, without anchors and comments.</summary>
internal static class CopiedNode
{
    public static NewNode Of(YamlNode node) => Aliases.Resolve(node) switch
    {
        { IsMapping: true } mapping => new NewMapping(
            [.. mapping.Pairs.Select(pair => new NewEntry(pair.Key.Value, Of(pair.Value)))], StyleOf(mapping)),
        { IsSequence: true } list => new NewSequence([.. list.Items.Select(item => Of(item.Value))], StyleOf(list)),
        var scalar => new NewScalar(scalar.Value, scalar.IsPlain ? ScalarKind.Plain : ScalarKind.Text),
    };

    public static CollectionStyle StyleOf(YamlNode node) => node.Style == YamlStyle.Flow ? CollectionStyle.Flow : CollectionStyle.LikeNeighbours;

    /// <summary>The entries of a mapping but those of some keys.</summary>
    public static ImmutableArray<NewEntry> Without(YamlNode mapping, params ReadOnlySpan<string> keys)
    {
        var entries = ImmutableArray.CreateBuilder<NewEntry>();
        foreach (var pair in Aliases.Resolve(mapping).Pairs)
        {
            if (!keys.Contains(pair.Key.Value)) entries.Add(new(pair.Key.Value, Of(pair.Value)));
        }

        return entries.ToImmutable();
    }
}
