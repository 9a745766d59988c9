using PanelTui.Documents.Text;

namespace PanelTui.Documents.Writing;

/// <summary>
/// Removes an entry from the brackets of a flow collection, with its comma and, where it has lines of its own, its
/// lines.
/// </summary>
internal static class FlowRemoval
{
    private const string WouldLoseComment = "a comment inside the brackets would be lost; move it first";

    public static IEnumerable<TextEdit> Of(FlowSlots slots, int index)
    {
        if (slots.Count == 1) return Only(slots);
        return slots.CommaAfter(index) is { } comma ? UpTo(slots, index, comma + 1) : Last(slots, index);
    }

    private static IEnumerable<TextEdit> Only(FlowSlots slots) =>
        slots.HasComment(slots.Inner) ? throw new CannotEdit(WouldLoseComment) : [TextEdit.Remove(slots.Inner)];

    private static IEnumerable<TextEdit> UpTo(FlowSlots slots, int index, int end)
    {
        var start = slots.Spans[index].Start;
        if (WholeLines(slots, index, end) is { } lines) return [TextEdit.Remove(lines)];
        RefuseLoss(slots, TextSpan.Between(start, end));
        return [TextEdit.Remove(TextSpan.Between(start, AfterBlanks(slots, end)))];
    }

    // Without a comma of its own it takes the one before.
    private static IEnumerable<TextEdit> Last(FlowSlots slots, int index)
    {
        var span = slots.Spans[index];
        var comma = slots.CommaAfter(index - 1)!.Value;
        if (WholeLines(slots, index, span.End) is { } lines)
            return [TextEdit.Remove(new(comma, 1)), TextEdit.Remove(lines)];
        RefuseLoss(slots, span);
        return slots.HasComment(TextSpan.Between(comma, span.End))
            ? [TextEdit.Remove(new(comma, 1)), TextEdit.Remove(span)]
            : [TextEdit.Remove(TextSpan.Between(comma, span.End))];
    }

    private static TextSpan? WholeLines(FlowSlots slots, int index, int end)
    {
        var source = slots.Source;
        var span = slots.Spans[index];
        if (!slots.StartsLine(index) || !source.EndsItsLine(end)) return null;
        RefuseLoss(slots, TextSpan.Between(span.Start, end));
        return source.WholeLines(source.LineOf(span.Start), source.LineBefore(end));
    }

    private static void RefuseLoss(FlowSlots slots, TextSpan span)
    {
        if (slots.HasComment(span)) throw new CannotEdit(WouldLoseComment);
    }

    // A comment needs a blank before it.
    private static int AfterBlanks(FlowSlots slots, int at) =>
        slots.Source.AfterBlanks(at) is var end && slots.Source.Text[end] == '#' ? end - 1 : end;
}
