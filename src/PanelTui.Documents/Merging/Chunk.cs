using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>One entry of a mapping or list by indentation: the comments and blank lines above it, and its own lines.</summary>
/// <param name="Key">The key's text; empty in a list.</param>
/// <param name="Lead">The lines above.</param>
/// <param name="Own">Its own lines, the first of them with its key or dash.</param>
/// <param name="Value">Its value, in the tree of all.</param>
/// <param name="Start">Where its own lines start in the text of that tree.</param>
internal sealed record Chunk(string Key, string Lead, string Own, YamlNode Value, int Start)
{
    public string Text => Lead + Own;

    /// <summary>The same without the lines above.</summary>
    public Chunk Bare => this with { Lead = "" };
}

/// <summary>A mapping or list by indentation at the left edge of its lines, cut into chunks that make up every line.</summary>
internal sealed record Chunks(ImmutableArray<Chunk> All, string Tail)
{
    private readonly Lazy<Dictionary<string, Chunk>> _byKey = new(() => All.ToDictionary(chunk => chunk.Key, StringComparer.Ordinal));

    /// <summary>The entry of a mapping with this key; null where there is none.</summary>
    public Chunk? Find(string key) => _byKey.Value.GetValueOrDefault(key);

    /// <summary>Null where the lines hold something else, or entries that cannot be told apart by lines.</summary>
    public static Chunks? OfMapping(string text)
    {
        if (Lines.Tree(text) is not { } tree) return null;
        if (tree.Root is null or { IsEmpty: true }) return new([], text);
        if (tree.Root is not { IsMapping: true, Style: YamlStyle.Block, Anchor: null, Tag: null } root) return null;
        if (root.Pairs.Any(pair => !pair.Key.IsScalar || pair.QuestionOffset is not null)) return null;
        if (root.Pairs.Select(pair => pair.Key.Value).Distinct().Count() != root.Pairs.Length) return null;
        return Cut(tree.Source, [.. root.Pairs.Select(pair => (pair.Key.Value, pair.Start, pair.FullEnd, pair.Value))]);
    }

    public static Chunks? OfList(string text)
    {
        if (Lines.Tree(text) is not { } tree) return null;
        if (tree.Root is null or { IsEmpty: true } or { IsSequence: true, Items.IsEmpty: true }) return new([], "");
        if (tree.Root is not { IsSequence: true, Style: YamlStyle.Block, Anchor: null, Tag: null } root) return null;
        return Cut(tree.Source, [.. root.Items.Select(item => ("", item.Start, Math.Max(item.Value.FullEnd, item.Start + 1), item.Value))]);
    }

    private static Chunks? Cut(SourceText source, ImmutableArray<(string Key, int Start, int End, YamlNode Value)> entries)
    {
        var chunks = ImmutableArray.CreateBuilder<Chunk>(entries.Length);
        var next = 1;
        foreach (var (key, start, end, value) in entries)
        {
            var first = source.LineOf(start);
            if (first < next || source.ColumnOf(start) != 0) return null;
            var last = LastLine(source, source.LineBefore(end));
            chunks.Add(new(key, Between(source, next, first - 1), Between(source, first, last), value, StartOf(source, first)));
            next = last + 1;
        }

        return new(chunks.DrainToImmutable(), source.Text[Math.Min(source.Text.Length, StartOf(source, next))..]);
    }

    // Comments right below that are indented belong to what is above them.
    private static int LastLine(SourceText source, int last)
    {
        while (source.IsCommentLine(last + 1) && source.Text[source.LineSpan(last + 1).Start] is ' ' or '\t') last++;
        return last;
    }

    private static string Between(SourceText source, int first, int last) =>
        first > last ? "" : source.Slice(source.WholeLines(first, last));

    private static int StartOf(SourceText source, int line) =>
        line > source.LineCount ? source.Text.Length : source.Lines.StartOf(line);
}
