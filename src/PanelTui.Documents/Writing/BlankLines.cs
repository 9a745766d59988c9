using System.Collections.Immutable;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Writing;

/// <summary>The blank lines that separate the items of a list.</summary>
internal static class BlankLines
{
    /// <summary>Whether at least half of the items are separated from the next by a blank line.</summary>
    public static bool Separate(SourceText source, ImmutableArray<LineRange> regions)
    {
        var separated = regions.SkipLast(1).Count(region => source.IsBlankLine(region.Last + 1));
        return regions.Length > 1 && separated * 2 >= regions.Length - 1;
    }

    /// <summary>
    /// The run of blank lines that should go together with an item: the one that would else be left over.
    /// </summary>
    /// <remarks>
    /// Where the item has blank lines on both sides, one run goes; at an end of the list its only one does.
    /// </remarks>
    public static LineRange? RunOf(SourceText source, ImmutableArray<LineRange> regions, int index)
    {
        var above = Above(source, regions[index].First, index == 0 ? 0 : regions[index - 1].Last);
        var below = Below(source, regions[index].Last);
        if (index == regions.Length - 1) return index > 0 ? above : null;
        return index == 0 || above is not null ? below : null;
    }

    private static LineRange? Above(SourceText source, int line, int floor)
    {
        var first = line;
        while (first - 1 > floor && source.IsBlankLine(first - 1)) first--;
        return first < line ? new(first, line - 1) : null;
    }

    // The empty line after the text's last break is no blank line.
    private static LineRange? Below(SourceText source, int line)
    {
        var last = line;
        while (last + 1 < source.LineCount && source.IsBlankLine(last + 1)) last++;
        return last > line ? new(line + 1, last) : null;
    }
}
