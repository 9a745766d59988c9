using PanelTui.Documents.Text;
using PanelTui.Engine;
using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Yaml;

/// <summary>Gives every node of a tree its place, by walking the tree and the tokens side by side.</summary>
internal sealed class TokenWalk(SourceText source, IReadOnlyList<Token> tokens)
{
    private readonly TokenCursor _cursor = new(tokens, source.Text.Length);

    public void Place(YamlNode root)
    {
        _cursor.SkipWhile(token => token is StreamStart or VersionDirective or TagDirective or DocumentStart);
        PlaceNode(root);
        _cursor.SkipWhile(token => token is BlockEnd or DocumentEnd or StreamEnd);
        if (_cursor.Next is { } left) throw Lost(left);
    }

    private void PlaceNode(YamlNode node)
    {
        PlaceProperties(node);
        switch (node.Kind)
        {
            case YamlKind.Mapping when node.Style == YamlStyle.Flow:
                PlaceFlowMapping(node);
                break;
            case YamlKind.Mapping:
                _cursor.TakeIf<BlockMappingStart>();
                node.Pairs.ForEach(PlacePair);
                PlaceAround(node);
                break;
            case YamlKind.Sequence when node.Style == YamlStyle.Flow:
                PlaceFlow<FlowSequenceStart, FlowSequenceEnd>(node, () => node.Items.ForEach(PlaceFlowItem));
                break;
            case YamlKind.Sequence:
                _cursor.TakeIf<BlockSequenceStart>();
                node.Items.ForEach(PlaceBlockItem);
                PlaceAround(node);
                break;
            case YamlKind.Scalar or YamlKind.Alias:
                PlaceLeaf(node);
                break;
            default:
                throw Unnamed.Of(node.Kind);
        }
    }

    private void PlaceProperties(YamlNode node)
    {
        var first = _cursor.NextInside;
        var has = node.Anchor is not null || node.Tag is not null;
        node.Start = first is null || node.IsEmpty && !has ? _cursor.LastEnd : _cursor.StartOf(first);
        while (has && _cursor.Next is Anchor or Tag) _cursor.Take();
        node.PropsEnd = has ? _cursor.LastEnd : node.Start;
    }

    private void PlaceLeaf(YamlNode node)
    {
        if (node.IsEmpty)
        {
            node.CoreStart = node.End = node.FullEnd = _cursor.LastEnd;
            return;
        }

        var expected = node.Kind == YamlKind.Alias ? typeof(AnchorAlias) : typeof(Scalar);
        var token = Take(expected);
        node.CoreStart = _cursor.StartOf(token);
        node.End = node.FullEnd = _cursor.EndOf(token);
        if (node.Style is YamlStyle.Literal or YamlStyle.Folded) TightenBlockScalar(node);
    }

    private void TightenBlockScalar(YamlNode node)
    {
        var shape = BlockScalarShape.Of(source, node.Span, node.BlockColumn(source));
        node.End = shape.End;
        if (!shape.Keeps) node.FullEnd = shape.End;
    }

    private static void PlaceAround(YamlNode node)
    {
        node.CoreStart = node.IsMapping ? node.Pairs[0].Start : node.Items[0].Start;
        node.End = node.IsMapping ? node.Pairs[^1].Span.End : node.Items[^1].Span.End;
        node.FullEnd = node.IsMapping ? node.Pairs[^1].FullEnd : node.Items[^1].Value.FullEnd;
        if (node.PropsEnd == node.Start) node.Start = node.PropsEnd = node.CoreStart;
    }

    private void PlaceFlowMapping(YamlNode node)
    {
        node.IsBarePair = _cursor.NextInside is Key or Value;
        if (!node.IsBarePair)
        {
            PlaceFlow<FlowMappingStart, FlowMappingEnd>(node, () => node.Pairs.ForEach(PlaceFlowPair));
            return;
        }

        node.Pairs.ForEach(PlacePair);
        PlaceAround(node);
    }

    private void PlaceFlow<TStart, TEnd>(YamlNode node, Action placeChildren)
        where TStart : Token
        where TEnd : Token
    {
        node.CoreStart = _cursor.StartOf(Take(typeof(TStart)));
        placeChildren();
        _cursor.SkipWhile(token => token is FlowEntry);
        node.End = node.FullEnd = _cursor.EndOf(Take(typeof(TEnd)));
    }

    private void PlaceFlowPair(YamlPair pair)
    {
        _cursor.SkipWhile(token => token is FlowEntry);
        PlacePair(pair);
    }

    private void PlaceFlowItem(YamlItem item)
    {
        _cursor.SkipWhile(token => token is FlowEntry);
        PlaceNode(item.Value);
    }

    private void PlacePair(YamlPair pair)
    {
        if (_cursor.NextInside is Key key)
        {
            _cursor.Take();
            if (_cursor.EndOf(key) > _cursor.StartOf(key)) pair.QuestionOffset = _cursor.StartOf(key);
        }

        PlaceNode(pair.Key);
        pair.ColonOffset = _cursor.TakeIf<Value>();
        PlaceNode(pair.Value);
    }

    private void PlaceBlockItem(YamlItem item)
    {
        item.DashOffset = _cursor.StartOf(Take(typeof(BlockEntry)));
        PlaceNode(item.Value);
    }

    private Token Take(Type expected) =>
        _cursor.NextInside is { } next && next.GetType() == expected ? _cursor.Take() : throw Lost(_cursor.Next);

    private YamlProblem Lost(Token? at) =>
        YamlProblem.At(source, at is null ? source.Text.Length : _cursor.StartOf(at), StructureGate.Refusal);
}
