using PanelTui.Documents.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Builds the tree of nodes from the parser's events, without recursion and within the limits. Places come later.
/// </summary>
internal sealed class EventTree(SourceText source, ParseLimits limits)
{
    private readonly Stack<OpenCollection> _open = [];
    private readonly Dictionary<string, YamlNode> _anchors = [];
    private YamlNode? _root;
    private int _documents;
    private int _nodes;
    private int _aliases;

    public YamlNode? Read(IParser parser)
    {
        while (parser.MoveNext()) Take(parser.Current!);
        return _root;
    }

    private void Take(ParsingEvent read)
    {
        switch (read)
        {
            case DocumentStart when ++_documents > 1:
                throw Problem(read, "the file holds more than one YAML document; a schedule is one");
            case AnchorAlias alias:
                Add(AliasOf(alias));
                break;
            case Scalar scalar:
                Add(ScalarOf(scalar));
                break;
            case MappingStart or SequenceStart:
                Open((NodeEvent)read);
                break;
            case MappingEnd or SequenceEnd:
                Add(_open.Pop().Close());
                break;
            default: // marks of the stream and of the document
                break;
        }
    }

    private YamlNode AliasOf(AnchorAlias alias)
    {
        Count(alias);
        if (++_aliases > limits.Aliases)
            throw Problem(alias, $"more than {limits.Aliases:N0} aliases (*name) in one file");
        return _anchors.TryGetValue(alias.Value.Value, out var target)
            ? new(YamlKind.Alias, YamlStyle.Plain, alias.Value.Value) { Target = target }
            : throw Problem(alias, $"*{alias.Value.Value} repeats a value marked &{alias.Value.Value}, but there is none above it");
    }

    private YamlNode ScalarOf(Scalar scalar)
    {
        Count(scalar);
        if (scalar.Value.Length > limits.ScalarLength)
            throw Problem(scalar, $"the value is longer than {limits.ScalarLength:N0} characters");
        return Named(new(YamlKind.Scalar, StyleOf(scalar.Style), scalar.Value) { Anchor = AnchorOf(scalar), Tag = TagOf(scalar) });
    }

    private void Open(NodeEvent start)
    {
        Count(start);
        if (_open.Count >= limits.Depth) throw Problem(start, $"values are nested deeper than {limits.Depth} levels");
        var isMapping = start is MappingStart;
        var isFlow = isMapping
            ? ((MappingStart)start).Style == MappingStyle.Flow
            : ((SequenceStart)start).Style == SequenceStyle.Flow;
        _open.Push(new(Named(new(isMapping ? YamlKind.Mapping : YamlKind.Sequence, isFlow ? YamlStyle.Flow : YamlStyle.Block)
        {
            Anchor = AnchorOf(start),
            Tag = TagOf(start),
        })));
    }

    private void Add(YamlNode node)
    {
        if (_open.TryPeek(out var parent)) parent.Add(node);
        else _root = node;
    }

    private YamlNode Named(YamlNode node)
    {
        if (node.Anchor is { } name) _anchors[name] = node;
        return node;
    }

    private void Count(ParsingEvent read)
    {
        if (++_nodes > limits.Nodes) throw Problem(read, $"more than {limits.Nodes:N0} keys and values in one file");
    }

    private YamlProblem Problem(ParsingEvent read, string message) =>
        YamlProblem.At(source, (int)read.Start.Index, message);

    private static string? AnchorOf(NodeEvent read) => read.Anchor.IsEmpty ? null : read.Anchor.Value;

    private static string? TagOf(NodeEvent read) =>
        read.Tag.IsEmpty ? null : read.Tag.IsNonSpecific ? "!" : read.Tag.Value;

    private static YamlStyle StyleOf(ScalarStyle style) => style switch
    {
        ScalarStyle.SingleQuoted => YamlStyle.SingleQuoted,
        ScalarStyle.DoubleQuoted => YamlStyle.DoubleQuoted,
        ScalarStyle.Literal => YamlStyle.Literal,
        ScalarStyle.Folded => YamlStyle.Folded,
        ScalarStyle.Plain or ScalarStyle.ForcePlain or ScalarStyle.Any => YamlStyle.Plain,
        _ => YamlStyle.Plain,
    };
}
