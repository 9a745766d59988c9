using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Reading;

/// <summary>
/// Where each fact of a schedule stands in its text: the schedule has no places, the tree has no meaning.
/// </summary>
public sealed class SourceMap
{
    /// <summary>Of a text that could not be read at all: everything is at its start.</summary>
    public static readonly SourceMap Empty = new(null, null);

    private readonly YamlNode? _root;
    private readonly ImmutableArray<Circuit> _circuits;

    internal SourceMap(YamlTree? tree, Schedule? schedule)
    {
        _root = tree?.Root;
        _circuits = schedule?.Circuits ?? [];
    }

    /// <summary>
    /// The place of a value, aliases and merge keys followed; where there is none, of what is next above it.
    /// </summary>
    public TextSpan SpanOf(YamlPath path)
    {
        var node = _root;
        foreach (var step in path.Steps)
        {
            if (node is null || Below(node, step) is not { } next) break;
            node = next;
        }

        return node?.Span ?? default;
    }

    /// <summary>The value at a path, aliases and merge keys followed; null where there is none.</summary>
    public YamlNode? NodeAt(YamlPath path) =>
        path.Steps.Aggregate(_root, (node, step) => node is null ? null : Below(node, step));

    /// <summary>The circuits that hold any of these spaces, in the order of the file.</summary>
    public ImmutableArray<Circuit> CircuitsAt(IEnumerable<SpaceNumber> spaces)
    {
        var wanted = spaces.ToImmutableArray();
        return [.. _circuits.Where(circuit => circuit.Spaces.Any(space => wanted.Any(space.Overlaps)))];
    }

    /// <summary>Where a finding is shown: at the key that its rule is about.</summary>
    public TextSpan SpanOf(Finding finding) => SpansOf(finding)[0];

    /// <summary>All the places that a finding speaks of, such as both circuits in one space; at least one.</summary>
    public ImmutableArray<TextSpan> SpansOf(Finding finding)
    {
        var circuits = FindingPlaces.IsAboutPanel(finding.Rule) ? [] : CircuitsOf(finding);
        return circuits.IsEmpty
            ? [SpanOf(FindingPlaces.InPanel(finding.Rule))]
            : [.. circuits.Select(circuit => SpanOf(FindingPlaces.InCircuit(finding.Rule, circuit.Ordinal)))];
    }

    /// <summary>
    /// Where two breakers meet, one of them may have nothing to do with the finding: the one that fits better
    /// counts.
    /// </summary>
    private ImmutableArray<Circuit> CircuitsOf(Finding finding)
    {
        ImmutableArray<Circuit> exact = [.. _circuits.Where(circuit => circuit.Spaces.SequenceEqual(finding.Spaces))];
        return exact.IsEmpty || finding.Rule == FindingPlaces.SpaceTakenTwice ? CircuitsAt(finding.Spaces) : exact;
    }

    private static YamlNode? Below(YamlNode node, YamlStep step)
    {
        if (step.Key is not { } key) return step.From(Aliases.Resolve(node)) is { } item ? Aliases.Resolve(item) : null;
        return Aliases.ValueOf(node, key);
    }
}
