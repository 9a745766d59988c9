using System.Collections.Immutable;

namespace PanelTui.Documents.Text;

/// <summary>
/// What one step of undo does and undoes: replacements in sequence, and a title such as "change breaker".
/// </summary>
/// <remarks>
/// Each edit's span counts in the text that the edits before it have left, so that two changes join by concatenation.
/// </remarks>
public sealed record TextChange(string Title, ImmutableArray<TextEdit> Edits)
{
    /// <summary>Whether no edit is left to make.</summary>
    public bool IsEmpty => Edits.IsEmpty;

    /// <summary>A change whose spans all count in the same text, wherever they stand; they must not overlap.</summary>
    public static TextChange OfDisjoint(string title, IEnumerable<TextEdit> edits) =>
        new(title, [.. edits.Reverse().OrderByDescending(edit => edit.Span.Start).ThenBy(edit => edit.Span.IsEmpty)]);

    /// <summary>The change that turns one text into another by replacing what lies between their common ends.</summary>
    public static TextChange Between(string title, string before, string after)
    {
        if (before == after) return new(title, []);
        var head = before.AsSpan().CommonPrefixLength(after);
        if (head > 0 && char.IsHighSurrogate(before[head - 1])) head--;
        var tail = CommonTail(before.AsSpan(head), after.AsSpan(head));
        return new(title, [new(TextSpan.Between(head, before.Length - tail), after[head..^tail])]);
    }

    public string ApplyTo(string text) => Edits.Aggregate(text, (current, edit) => edit.ApplyTo(current));

    /// <summary>The change that leads back to the given text after this one has been applied to it.</summary>
    public TextChange Inverse(string before)
    {
        var undone = new Stack<TextEdit>(Edits.Length);
        foreach (var edit in Edits)
        {
            undone.Push(edit.Inverse(before));
            before = edit.ApplyTo(before);
        }

        return this with { Edits = [.. undone] };
    }

    /// <summary>This change and then the other, as one step under this title.</summary>
    public TextChange Then(TextChange next) => this with { Edits = [.. Edits, .. next.Edits] };

    private static int CommonTail(ReadOnlySpan<char> before, ReadOnlySpan<char> after)
    {
        var length = 0;
        while (length < before.Length && length < after.Length && before[^(length + 1)] == after[^(length + 1)]) length++;
        return length > 0 && char.IsLowSurrogate(before[^length]) ? length - 1 : length;
    }
}
