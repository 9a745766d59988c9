using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>
/// Adds a key where the format's order has it among the keys that are there, with the sections around it.
/// </summary>
internal static class NewKey
{
    public static TextChange Of(YamlTree tree, YamlPath path, NewNode value)
    {
        var (missing, node) = Outermost(tree, path, value);
        var owner = missing.Parent;
        var key = missing.Last.Key ?? throw new CannotEdit($"there is nothing at {missing}");
        var map = owner.Find(tree);
        if (map is null || !map.IsMapping || map.Pairs.IsEmpty) return YamlEditor.InsertEntry(tree, owner, key, node);
        return After(map, missing) is { } after
            ? YamlEditor.InsertEntry(tree, owner, key, node, after)
            : YamlEditor.InsertEntryAt(tree, owner, 0, key, node);
    }

    /// <summary>The key of a mapping that the format has nearest before the one at the path; nothing where there is none.</summary>
    public static string? After(YamlNode map, YamlPath path) =>
        Before(path.Parent, path.Last.Key!).FirstOrDefault(known => map.PairOf(known) is not null);

    /// <summary>The outermost section that is missing, with what it must hold.</summary>
    private static (YamlPath Path, NewNode Node) Outermost(YamlTree tree, YamlPath path, NewNode node)
    {
        while (!path.Parent.IsRoot && path.Parent.Find(tree) is null && path.Last.Key is { } key)
            (path, node) = (path.Parent, new NewMapping([new(key, node)]));
        return (path, node);
    }

    /// <summary>The keys that the format has before this one, the nearest first.</summary>
    private static IEnumerable<string> Before(YamlPath owner, string key) =>
        FieldBook.Of(FieldBook.PatternOf(owner)).Select(field => field.Key).TakeWhile(known => known != key).Reverse();
}
