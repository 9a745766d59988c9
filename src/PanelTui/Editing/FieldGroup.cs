using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>The keys that must come together: those that a section cannot be without and does not have yet, and the one that is to be set.</summary>
internal static class FieldGroup
{
    /// <summary>Of each pair neither makes sense alone, though neither is needed where the third way is taken.</summary>
    private static readonly (string Key, string Partner)[] Partners =
        [("source.solar.peak", "source.solar.sun_hours"), ("source.solar.sun_hours", "source.solar.peak")];

    public static ImmutableArray<YamlPath> Of(Snapshot snapshot, YamlPath path) =>
    [
        .. Owners(path).Reverse().SelectMany(owner => Missing(snapshot, owner)).Append(path).Distinct(),
        .. Partners.Where(pair => pair.Key == FieldBook.PatternOf(path)).Select(pair => path.Parent.Then(FieldBook.Find(pair.Partner)!.Key))
            .Where(partner => !FieldValue.IsThere(snapshot, partner)),
    ];

    private static IEnumerable<YamlPath> Owners(YamlPath path)
    {
        for (var owner = path.Parent; !owner.IsRoot; owner = owner.Parent)
        {
            if (owner.Last.Key is not null) yield return owner;
        }
    }

    private static IEnumerable<YamlPath> Missing(Snapshot snapshot, YamlPath owner) =>
        FieldBook.Of(FieldBook.PatternOf(owner))
            .Where(field => field.IsRequired)
            .Select(field => owner.Then(field.Key))
            .Where(path => !FieldValue.IsThere(snapshot, path));
}
