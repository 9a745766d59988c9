using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Moves an item within its list: its lines with their comments and spacing, or its text between the brackets.
/// </summary>
internal static class ItemMove
{
    public static TextChange Of(YamlTree tree, YamlPath path, int from, int to)
    {
        var draft = Draft.Of(tree);
        var list = ItemRemoval.ListAt(draft, path, from, to);
        if (from == to) return new("move in the list", []);
        var edits = list.Style == YamlStyle.Flow
            ? Rotate(draft.Source, new FlowSlots(draft.Tree, list).Spans, from, to)
            : Lines(draft.Source, list, from, to);
        return draft.Commit("move in the list", edits, draft.With(path, old => old.WithItemMoved(from, to)));
    }

    // Commas, blanks and comments stay where they are; the values between them change places.
    private static IEnumerable<TextEdit> Rotate(SourceText source, ImmutableArray<TextSpan> slots, int from, int to)
    {
        var order = Enumerable.Range(0, slots.Length).Where(index => index != from).ToList();
        order.Insert(to, from);
        return slots.Select((slot, index) => new TextEdit(slot, source.Slice(slots[order[index]])));
    }

    private static IEnumerable<TextEdit> Lines(SourceText source, YamlNode list, int from, int to)
    {
        ItemRemoval.RefuseSharedLine(source, list, from);
        ItemRemoval.RefuseSharedLine(source, list, to);
        var regions = ItemRegions.Of(source, list);
        var own = source.WholeLines(regions[from].First, regions[from].Last);
        TextSpan? run = BlankLines.RunOf(source, regions, from) is { } blank ? source.WholeLines(blank.First, blank.Last) : null;
        var gap = run is { } lines ? source.Slice(lines) : "";
        yield return TextEdit.Remove(own);
        if (run is { } cut) yield return TextEdit.Remove(cut);
        yield return to == 0
            ? TextEdit.Insert(source.Lines.StartOf(regions[0].First), source.Slice(own) + gap)
            : TextEdit.Insert(source.Lines.NextStartOf(regions[Before(from, to)].Last), gap + source.Slice(own));
    }

    // The item that will stand just before the moved one.
    private static int Before(int from, int to) => from < to ? to : to - 1;
}
