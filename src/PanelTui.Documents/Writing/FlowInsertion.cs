using PanelTui.Documents.Text;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Adds an entry between the brackets of a flow collection, with its comma, on a line of its own where the others have
/// one.
/// </summary>
internal static class FlowInsertion
{
    public static IEnumerable<TextEdit> Of(FlowSlots slots, int index, string text)
    {
        if (slots.Count == 0) return IntoEmpty(slots, text);
        if (index == 0) return [TextEdit.Insert(slots.Spans[0].Start, text + "," + Gap(slots, 0))];
        return slots.StartsLine(index - 1) && OnOwnLine(slots, index, text) is { } lines
            ? lines
            : InLine(slots, index, text);
    }

    private static IEnumerable<TextEdit> IntoEmpty(FlowSlots slots, string text)
    {
        var inner = slots.Source.Slice(slots.Inner);
        return inner.Trim(' ', '\t').Length == 0 ? [new(slots.Inner, text)] : [TextEdit.Insert(slots.Close, text)];
    }

    private static IEnumerable<TextEdit> InLine(FlowSlots slots, int index, string text)
    {
        if (index < slots.Count) return [TextEdit.Insert(slots.Spans[index].Start, $"{text}, ")];
        return slots.CommaAfter(index - 1) is { } comma
            ? [TextEdit.Insert(comma + 1, $" {text},")]
            : [TextEdit.Insert(slots.Spans[index - 1].End, $", {text}")];
    }

    // Null where what follows the entry before shares its line.
    private static IEnumerable<TextEdit>? OnOwnLine(FlowSlots slots, int index, string text)
    {
        var source = slots.Source;
        var comma = slots.CommaAfter(index - 1);
        var end = comma + 1 ?? slots.Spans[index - 1].End;
        var gap = Gap(slots, index - 1);
        if (source.EndsItsLine(end))
        {
            var line = TextEdit.Insert(source.EndOfLine(source.LineOf(end)), gap + text + (comma is null ? "" : ","));
            return comma is null ? [TextEdit.Insert(end, ","), line] : [line];
        }

        return index == slots.Count && comma is null ? [TextEdit.Insert(end, $",{gap}{text}")] : null;
    }

    // What separates an entry from the next: a blank, or a line break and the entry's indentation.
    private static string Gap(FlowSlots slots, int index)
    {
        if (!slots.StartsLine(index)) return " ";
        var source = slots.Source;
        var line = source.LineOf(slots.Spans[index].Start);
        return source.BreakNear(line) + source.Slice(TextSpan.Between(source.Lines.StartOf(line), slots.Spans[index].Start));
    }
}
