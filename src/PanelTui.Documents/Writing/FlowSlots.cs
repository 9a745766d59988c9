using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// The places between the brackets of a flow collection: one for each entry, with the commas between.
/// </summary>
internal sealed class FlowSlots
{
    private readonly YamlTree _tree;
    private readonly YamlNode _node;

    public FlowSlots(YamlTree tree, YamlNode node)
    {
        _tree = tree;
        _node = node;
        Spans = node.IsMapping
            ? [.. node.Pairs.Select(pair => pair.Span)]
            : [.. node.Items.Select(item => item.Span)];
        if (node.IsBarePair)
            throw new CannotEdit("a single 'key: value' in a list's brackets has no braces; put it in { } first");
    }

    public ImmutableArray<TextSpan> Spans { get; }

    public SourceText Source => _tree.Source;

    public int Count => Spans.Length;

    /// <summary>What stands between the brackets.</summary>
    public TextSpan Inner => TextSpan.Between(_node.CoreStart + 1, _node.End - 1);

    /// <summary>Where the closing bracket stands.</summary>
    public int Close => _node.End - 1;

    /// <summary>Where the next entry starts, or the closing bracket.</summary>
    public int NextStart(int index) => index + 1 < Count ? Spans[index + 1].Start : Close;

    /// <summary>The comma after an entry; null where there is none, which is so only after the last.</summary>
    public int? CommaAfter(int index)
    {
        for (var at = Spans[index].End; at < NextStart(index); at++)
        {
            if (CommentAt(at) is { } comment) at = comment.End;
            if (Source.Text[at] == ',') return at;
        }

        return null;
    }

    /// <summary>Whether the entry starts its line.</summary>
    public bool StartsLine(int index) => Source.StartsItsLine(Spans[index].Start);

    public bool HasComment(TextSpan span) =>
        _tree.Comments.Any(comment => comment.Start < span.End && comment.End > span.Start);

    private TextSpan? CommentAt(int offset)
    {
        if (Source.Text[offset] != '#') return null;
        var found = _tree.Comments.BinarySearch(new(offset, 0), Comparer<TextSpan>.Create((a, b) => a.Start.CompareTo(b.Start)));
        return found >= 0 ? _tree.Comments[found] : null;
    }
}
