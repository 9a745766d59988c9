using System.Collections.Immutable;
using PanelTui.Documents.Yaml;

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

    /// <summary>
    /// The text that this change leads to, as it was read to prove the change, so that it is not read twice; null where it was not
    /// read. The history of a file does not keep it.
    /// </summary>
    internal YamlTree? Result { get; init; }

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

    public string ApplyTo(string text) => EditRun.Of(Edits).Aggregate(text, (current, run) => run.ApplyTo(current));

    /// <summary>The change that leads back to the given text after this one has been applied to it.</summary>
    public TextChange Inverse(string before)
    {
        var undone = new Stack<IEnumerable<TextEdit>>();
        foreach (var run in EditRun.Of(Edits))
        {
            undone.Push([.. run.Inverse(before)]);
            before = run.ApplyTo(before);
        }

        return this with { Edits = [.. undone.SelectMany(edits => edits)], Result = null };
    }

    /// <summary>This change and then the other, as one step under this title.</summary>
    public TextChange Then(TextChange next) =>
        this with { Edits = [.. Edits, .. next.Edits], Result = next.IsEmpty ? Result : next.Result };

    /// <summary>Two changes are the same when they do the same under the same title.</summary>
    public bool Equals(TextChange? other) => other is not null && Title == other.Title && Edits.SequenceEqual(other.Edits);

    public override int GetHashCode() => Edits.Aggregate(Title.GetHashCode(StringComparison.Ordinal), HashCode.Combine);

    private static int CommonTail(ReadOnlySpan<char> before, ReadOnlySpan<char> after)
    {
        var length = 0;
        while (length < before.Length && length < after.Length && before[^(length + 1)] == after[^(length + 1)]) length++;
        return length > 0 && char.IsLowSurrogate(before[^length]) ? length - 1 : length;
    }
}
