using System.Collections.Immutable;

namespace PanelTui.Documents.Text;

/// <summary>
/// Edits in sequence whose places follow each other in one direction, so that one pass over the text makes them all.
/// </summary>
/// <remarks>
/// The idea: an edit moves only what stands after it. Going down the offsets (20, 12, 3), no edit moves the place of the next one, so
/// each place counts in the text as it was. Going up (3, 12, 20), each place is moved by what the edits before it have added; taking
/// that away again gives the place in the text as it was. With all places in one text, the result is the unchanged stretches between
/// them with the new texts in between. For n characters and k edits that is O(n + k), where one edit after the other is O(n * k).
/// Example: "a b c" with [insert "X" at 4] then [insert "Y" at 2] goes down: places 2 and 4 in "a b c" make "a Yb Xc". The inverse is
/// [remove 1 at 2] then [remove 1 at 4]; it goes up, and the 4 is already where "X" stands once "Y" is gone.
/// </remarks>
internal readonly struct EditRun
{
    private readonly ImmutableArray<TextEdit> _edits;
    private readonly ImmutableArray<TextSpan> _places;

    private EditRun(ImmutableArray<TextEdit> edits, ImmutableArray<TextSpan> places)
    {
        _edits = edits;
        _places = places;
    }

    /// <summary>Cuts a sequence of edits into as few runs as its directions allow.</summary>
    public static IEnumerable<EditRun> Of(ImmutableArray<TextEdit> edits)
    {
        for (var first = 0; first < edits.Length;)
        {
            var end = first + 1;
            var goesDown = end < edits.Length && IsBefore(edits[end], edits[first]);
            while (end < edits.Length && (goesDown ? IsBefore(edits[end], edits[end - 1]) : IsAfter(edits[end], edits[end - 1]))) end++;
            yield return goesDown ? Down(edits[first..end]) : Up(edits[first..end]);
            first = end;
        }
    }

    /// <summary>The text after the edits of this run.</summary>
    public string ApplyTo(string text)
    {
        var (edits, places) = (_edits, _places);
        return string.Create(text.Length + edits.Sum(edit => edit.Growth), text, (all, before) =>
        {
            var (from, to) = (0, 0);
            for (var at = 0; at < edits.Length; at++)
            {
                Put(before.AsSpan(from, places[at].Start - from), all, ref to);
                Put(edits[at].NewText, all, ref to);
                from = places[at].End;
            }

            Put(before.AsSpan(from), all, ref to);
        });
    }

    /// <summary>For each edit, in the order of the text, the edit that takes it back.</summary>
    /// <param name="text">The text before the run.</param>
    public IEnumerable<TextEdit> Inverse(string text)
    {
        for (var at = 0; at < _edits.Length; at++)
        {
            // Those that stand before it have been taken back already, so its place is that in the text as it was.
            yield return new(new(_places[at].Start, _edits[at].NewText.Length), text.Substring(_places[at].Start, _places[at].Length));
        }
    }

    private static bool IsBefore(TextEdit next, TextEdit edit) => next.Span.End <= edit.Span.Start;

    private static bool IsAfter(TextEdit next, TextEdit edit) => next.Span.Start >= edit.Span.Start + edit.NewText.Length;

    private static EditRun Down(ImmutableArray<TextEdit> edits)
    {
        ImmutableArray<TextEdit> inOrder = [.. edits.Reverse()];
        return new(inOrder, [.. inOrder.Select(edit => edit.Span)]);
    }

    private static EditRun Up(ImmutableArray<TextEdit> edits)
    {
        var places = ImmutableArray.CreateBuilder<TextSpan>(edits.Length);
        var growth = 0;
        foreach (var edit in edits)
        {
            places.Add(edit.Span with { Start = edit.Span.Start - growth });
            growth += edit.Growth;
        }

        return new(edits, places.DrainToImmutable());
    }

    private static void Put(ReadOnlySpan<char> text, Span<char> all, ref int at)
    {
        text.CopyTo(all[at..]);
        at += text.Length;
    }
}
