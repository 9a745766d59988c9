using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Pages;

/// <summary>A key of the format at its place in the file.</summary>
internal readonly record struct FieldPlace(Field Field, YamlPath Path);

/// <summary>The keys of one section in the order of the format, those of the sections within it after each.</summary>
internal static class FieldPlaces
{
    public static ImmutableArray<FieldPlace> Of(YamlPath section) =>
        [.. FieldBook.Of(FieldBook.PatternOf(section)).SelectMany(field => WithItsOwn(new FieldPlace(field, section.Then(field.Key))))];

    private static IEnumerable<FieldPlace> WithItsOwn(FieldPlace place) =>
        place.Field.Shape == FieldShape.Mapping ? Of(place.Path).Prepend(place) : [place];
}
