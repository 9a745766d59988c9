using System.Text;

namespace PanelTui.Terminal;

/// <summary>Text that the terminal marks as pasted: kept together, and handed on in one piece.</summary>
/// <remarks>
/// Control characters in it are left out, save tabs and line ends. The mark of its end may stand in the text itself, to
/// have what follows taken for keys; while a later mark of an end is in sight, an earlier one counts as text.
/// </remarks>
internal sealed class PastedText
{
    public const string Begin = "\e[200~";
    private const string End = "\e[201~";

    /// <summary>The library takes no more at once; what is beyond is left out.</summary>
    private const int Longest = 1_000_000;

    private readonly StringBuilder _text = new();

    /// <summary>A paste that stops in the middle is handed on as it is after this.</summary>
    public static TimeSpan Patience { get; } = TimeSpan.FromSeconds(5);

    public bool IsOpen { get; private set; }

    public void Open() => IsOpen = true;

    /// <returns>The characters taken; 0 when they may be half a mark.</returns>
    public int Take(ReadOnlySpan<char> rest, StringBuilder keys)
    {
        var end = LastEnd(rest);
        if (end >= 0)
        {
            Add(rest[..end].ToString().Replace(End, "", StringComparison.Ordinal));
            keys.Append(Close());
            return end + End.Length;
        }

        var whole = rest.Length - HalfMark(rest);
        Add(rest[..whole]);
        return whole;
    }

    /// <summary>Hands on what has come, as one paste.</summary>
    public string Close()
    {
        IsOpen = false;
        var pasted = Begin + _text + End;
        _text.Clear();
        return pasted;
    }

    /// <summary>The mark that ends this paste: the last one before another begins.</summary>
    private static int LastEnd(ReadOnlySpan<char> rest)
    {
        var next = rest.IndexOf(Begin, StringComparison.Ordinal);
        return rest[..(next < 0 ? rest.Length : next)].LastIndexOf(End, StringComparison.Ordinal);
    }

    private static int HalfMark(ReadOnlySpan<char> rest)
    {
        for (var length = Math.Min(End.Length - 1, rest.Length); length > 0; length--)
        {
            if (rest.EndsWith(End.AsSpan(0, length), StringComparison.Ordinal))
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
