using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Comparing;

/// <summary>How changes call a circuit and its loads.</summary>
internal static class CircuitWords
{
    /// <summary>`Well pump (space 5, 7)`.</summary>
    public static string Name(YamlNode circuit)
    {
        var spaces = SpacesOf(circuit);
        var where = spaces.IsEmpty ? "no space" : $"space {string.Join(", ", spaces)}";
        return Identity.Text(circuit, "name") is { } name ? $"{name} ({where})" : where;
    }

    /// <summary>`20 A, 2 poles, gfci, motor 1 hp`.</summary>
    public static string Description(YamlNode circuit)
    {
        var poles = PolesOf(circuit);
        var parts = new[]
        {
            Identity.Text(circuit, "breaker"),
            poles > 1 ? $"{poles} poles" : null,
            Identity.Text(circuit, "protection") is { } watched and not "standard" ? watched : null,
        };
        return string.Join(", ", parts.OfType<string>().Concat(Loads(circuit).Select(Load)));
    }

    public static ImmutableArray<SpaceNumber> SpacesOf(YamlNode circuit) =>
        SpaceNumber.TryParse(Identity.Text(circuit, "space") ?? "", out var top)
            ? [.. Enumerable.Range(0, PolesOf(circuit)).Select(top.Below)]
            : [];

    /// <summary>`motor 1 hp`.</summary>
    public static string Load(YamlNode load) =>
        string.Join(" ", new[] { Identity.Text(load, "kind") ?? "load", Identity.Text(load, "rating") }.OfType<string>());

    public static ImmutableArray<YamlNode> Loads(YamlNode circuit) => Entries(KeyChanges.Value(circuit, "loads"));

    public static ImmutableArray<YamlNode> Entries(YamlNode? list) =>
        list is null ? [] : [.. Aliases.ItemsOf(list).Where(entry => entry.IsMapping)];

    private static int PolesOf(YamlNode circuit) =>
        int.TryParse(Identity.Text(circuit, "poles"), NumberStyles.None, CultureInfo.InvariantCulture, out var poles)
            ? Math.Clamp(poles, 1, 3)
            : 1;
}
