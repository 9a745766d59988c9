using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Reading;

/// <summary>Reports a name that two entries of a list have; the sentence names both lines.</summary>
internal sealed class UniqueNames(Field field, string entries, YamlTree tree, DiagnosticList diagnostics)
{
    private readonly Dictionary<string, YamlNode> _first = new(StringComparer.Ordinal);

    public void Add(MappingReader entry)
    {
        if (entry.ValueOf(field) is not { IsScalar: true } node) return;
        if (_first.TryAdd(node.Value, node)) return;
        var line = tree.Source.PositionOf(_first[node.Value].Span.Start).Line;
        diagnostics.Error(
            DiagnosticCodes.DuplicateName,
            node.Span,
            $"{field.Key} is {Quoted.Of(node.Value)}, as in line {line}; no two {entries} may have the same");
    }
}
