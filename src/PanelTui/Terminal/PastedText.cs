using System.Text;

namespace PanelTui.Terminal;

/// <summary>Text that the terminal marks as pasted: kept together, and handed on in one piece.</summary>
/// <remarks>
/// The mark of the end may stand in the pasted text itself, to have what follows taken for keys. So a paste ends at a
/// mark after which nothing comes for a while, or after which the next paste begins. What follows a mark without that
/// pause is text, however the line cuts it; then the pause must be longer. A terminal sends no end without a beginning,
/// so a mark of the end outside of a paste shows that an earlier one was false: all that came with it is text, too.
/// What is left: the line stands still for that pause right after a false mark, and what comes next holds no mark.
/// Control characters are left out, but for tabs and line ends. All marks are left out.
/// </remarks>
internal sealed class PastedText(TimeSpan pause)
{
    public const string Begin = "\e[200~";
    public const string End = "\e[201~";

    private const string EitherMark = "\e[20";

    /// <summary>The library takes no more at once; what is beyond is left out.</summary>
    private const int Longest = 1_000_000;

    /// <summary>A paste whose end never comes is handed on as it is after this.</summary>
    private static readonly TimeSpan NoEnd = TimeSpan.FromSeconds(5);

    /// <summary>A paste with a mark of the end inside goes on until nothing comes for this long.</summary>
    private static readonly TimeSpan AfterFalseEnd = TimeSpan.FromSeconds(1);

    private readonly StringBuilder _text = new();
    private bool _atEnd;
    private bool _hadFalseEnd;

    /// <summary>How long to wait for more before <see cref="Close"/>.</summary>
    public TimeSpan Patience => _atEnd && !_hadFalseEnd ? pause : _atEnd || _hadFalseEnd ? AfterFalseEnd : NoEnd;

    public bool IsOpen { get; private set; }

    /// <summary>True when a mark of the end comes first: of a paste that was taken to have ended before.</summary>
    public static bool GoesOn(string sent)
    {
        var end = sent.IndexOf(End, StringComparison.Ordinal);
        var begin = end < 0 ? -1 : sent.IndexOf(Begin, 0, end, StringComparison.Ordinal);
        return end >= 0 && begin < 0;
    }

    public void Open() => (IsOpen, _atEnd, _hadFalseEnd) = (true, false, false);

    /// <summary>Takes up a paste that was taken to have ended.</summary>
    public void Reopen() => (IsOpen, _atEnd, _hadFalseEnd) = (true, false, true);

    /// <returns>The characters taken; 0 when they may be half a mark.</returns>
    public int Take(ReadOnlySpan<char> rest, StringBuilder keys)
    {
        if (_atEnd && rest.StartsWith(Begin, StringComparison.Ordinal))
        {
            keys.Append(Close());
            Open();
            return Begin.Length;
        }

        if (_atEnd && rest.Length < Begin.Length && Begin.AsSpan().StartsWith(rest, StringComparison.Ordinal))
            return 0;
        _hadFalseEnd |= _atEnd;
        _atEnd = false;
        return TakeText(rest);
    }

    /// <summary>Hands on what has come, as one paste.</summary>
    public string Close()
    {
        IsOpen = false;
        var pasted = Begin + _text + End;
        _text.Clear();
        return pasted;
    }

    /// <summary>Text up to the next mark, and that mark.</summary>
    private int TakeText(ReadOnlySpan<char> rest)
    {
        var mark = rest.IndexOf(EitherMark, StringComparison.Ordinal);
        if (mark < 0)
        {
            var whole = rest.Length - HalfMark(rest);
            Add(rest[..whole]);
            return whole;
        }

        Add(rest[..mark]);
        var from = rest[mark..];
        if (IsHalf(from))
            return mark;
        _atEnd = from.StartsWith(End, StringComparison.Ordinal);
        return mark + (_atEnd || from.StartsWith(Begin, StringComparison.Ordinal) ? End.Length : 1);
    }

    private static bool IsHalf(ReadOnlySpan<char> text) => text.Length < End.Length
        && (End.AsSpan().StartsWith(text, StringComparison.Ordinal) || Begin.AsSpan().StartsWith(text, StringComparison.Ordinal));

    /// <summary>The characters at the end of a text that may be the start of a mark.</summary>
    private static int HalfMark(ReadOnlySpan<char> rest)
    {
        for (var length = Math.Min(EitherMark.Length - 1, rest.Length); length > 0; length--)
        {
            if (rest.EndsWith(EitherMark.AsSpan(0, length), StringComparison.Ordinal))
                return length;
        }

        return 0;
    }

    private void Add(ReadOnlySpan<char> text)
    {
        foreach (var letter in text)
        {
            if (_text.Length < Longest && (!char.IsControl(letter) || letter is '\t' or '\n' or '\r'))
                _text.Append(letter);
        }
    }
}
