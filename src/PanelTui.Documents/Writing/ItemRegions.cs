using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// The lines that belong to each item of a list by indentation: its own, the comments right above it, and the comments
/// right below that are indented deeper. Comments right below the list's key belong to the list.
/// </summary>
internal static class ItemRegions
{
    public static ImmutableArray<LineRange> Of(SourceText source, YamlNode list)
    {
        var regions = ImmutableArray.CreateBuilder<LineRange>(list.Items.Length);
        var owner = OwnerLine(source, list);
        foreach (var item in list.Items)
        {
            var above = regions.Count == 0 ? owner : regions[^1].Last;
            var own = source.LineOf(item.Start);
            var first = FirstComment(source, own, above);
            if (regions.Count == 0 && first == owner + 1) first = own;
            regions.Add(new(first, LastComment(source, item)));
        }

        return regions.DrainToImmutable();
    }

    /// <summary>The line that introduces the list: its key's, or 0 at the top of a file.</summary>
    public static int OwnerLine(SourceText source, YamlNode list)
    {
        if (list.PropsEnd > list.Start) return source.LineOf(list.Start);
        var before = source.Text.AsSpan(0, list.Start);
        for (var line = source.LineOf(list.Start); line >= 1; line--)
        {
            var isOwn = line == source.LineOf(list.Start);
            var text = before[source.Lines.StartOf(line)..];
            if (!isOwn) text = text[..(source.EndOfLine(line) - source.Lines.StartOf(line))];
            if (text.TrimStart() is { IsEmpty: false } rest && rest[0] != '#') return line;
        }

        return 0;
    }

    private static int FirstComment(SourceText source, int line, int above)
    {
        while (line - 1 > above && source.IsCommentLine(line - 1)) line--;
        return line;
    }

    private static int LastComment(SourceText source, YamlItem item)
    {
        var dash = source.ColumnOf(item.Start);
        var last = source.LineBefore(Math.Max(item.Value.FullEnd, item.Start + 1));
        while (source.IsCommentLine(last + 1) && IndentOf(source, last + 1) > dash) last++;
        return last;
    }

    private static int IndentOf(SourceText source, int line) =>
        source.Slice(source.LineSpan(line)) is var text ? text.Length - text.TrimStart(' ', '\t').Length : 0;
}
