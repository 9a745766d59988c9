using System.Text;

namespace PanelTui.Terminal;

/// <summary>
/// Turns what a terminal sends into whole keys that the library knows. A key cut in two by the line is put together
/// again; an answer of the terminal, and a key nobody knows, never becomes text.
/// </summary>
/// <remarks>
/// Terminal.Gui 2.5.0 throws on an unknown ESC [ n ~, loses keypad keys, and takes the end of a cut key for letters.
/// Escape and Alt go on in a form that it need not wait for: ESC [ 27 u, ESC [ 97 ; 3 u.
/// </remarks>
internal sealed class InputFilter(TimeSpan escapePatience)
{
    private const string EscapeKey = "\e[27u";

    /// <summary>The rest of a key, or of an answer, comes within this or never.</summary>
    private static readonly TimeSpan RestPatience = TimeSpan.FromSeconds(1);

    /// <summary>A line that may cut a key in two may pause within a paste, too.</summary>
    private readonly PastedText _paste = new(2 * escapePatience);
    private string _held = "";
    private bool _inAnswer;
    private bool _escapeWasLone;

    /// <summary>How long to wait for more before <see cref="Expire"/>; nothing when nothing is held.</summary>
    public TimeSpan? Patience => this switch
    {
        { _paste.IsOpen: true } => _paste.Patience,
        { _held: "\e", _inAnswer: false } => escapePatience,
        { _held.Length: > 0 } or { _inAnswer: true } or { _escapeWasLone: true } => RestPatience,
        _ => null,
    };

    /// <param name="sent">What the terminal sent, as far as it has come.</param>
    /// <returns>Whole keys, as the library knows them.</returns>
    public string Feed(string sent)
    {
        if (_escapeWasLone && _held.Length == 0 && LooksLikeARest(sent))
            sent = '\e' + sent;
        else if (_held.Length == 0)
            _escapeWasLone = false;
        var keys = new StringBuilder();
        var text = _held + sent;
        if (!_paste.IsOpen && PastedText.GoesOn(text))
        {
            _paste.Reopen();
            (_inAnswer, _escapeWasLone) = (false, false);
        }

        var at = 0;
        while (at < text.Length && TakeOne(text.AsSpan(at), keys) is > 0 and var taken)
            at += taken;
        _held = text[at..];
        return keys.ToString();
    }

    /// <summary>Nothing more has come: a lone Escape was the key, anything longer is given up.</summary>
    public string Expire()
    {
        if (_paste.IsOpen)
        {
            _held = "";
            return _paste.Close();
        }

        var (held, inAnswer, wasLone) = (_held, _inAnswer, _escapeWasLone);
        _held = "";
        _inAnswer = false;
        _escapeWasLone = held == "\e" && !inAnswer;
        return _escapeWasLone ? EscapeKey
            : wasLone && held.Length > 0 ? held[1..] // after all it was typed: Escape, and then a bracket
            : "";
    }

    /// <returns>The characters taken; 0 when what is there is not whole yet.</returns>
    private int TakeOne(ReadOnlySpan<char> rest, StringBuilder keys)
    {
        if (_paste.IsOpen)
            return _paste.Take(rest, keys);
        if (_inAnswer)
            return TakeAnswer(rest);
        if (rest[0] != '\e')
            return TakeText(rest, keys);
        if (rest.Length == 1)
            return 0;
        return rest[1] switch
        {
            '[' => TakeControl(rest, keys),
            'O' => TakeSingleShift(rest, keys),
            ']' or 'P' or 'X' or '^' or '_' => BeginAnswer(),
            '\e' => Say(EscapeKey, keys, 1),
            _ => TakeAlt(rest, keys),
        };
    }

    private static int TakeText(ReadOnlySpan<char> rest, StringBuilder keys)
    {
        var end = rest.IndexOf('\e');
        var text = end < 0 ? rest : rest[..end];
        foreach (var letter in text)
        {
            if (letter is not (>= '\u0080' and <= '\u009f'))
                keys.Append(letter == '\b' ? '\u007f' : letter); // many terminals send ^H for Backspace
        }

        return text.Length;
    }

    /// <summary>ESC [ parameters, and a letter that says what it is.</summary>
    private int TakeControl(ReadOnlySpan<char> rest, StringBuilder keys)
    {
        var length = ControlSequence.LengthOf(rest);
        if (length == 0)
            return 0;
        var wasLone = _escapeWasLone; // its Escape is gone, and half a key is no key
        _escapeWasLone = false;
        if (length < 0)
            keys.Append(wasLone ? rest[1..-length] : []);
        else if (!wasLone && rest.StartsWith(PastedText.Begin, StringComparison.Ordinal))
            _paste.Open();
        else if (!wasLone)
            keys.Append(ControlSequence.Translate(rest[..length].ToString()));
        return Math.Abs(length);
    }

    /// <summary>ESC O and a letter: function keys, and the keypad in application mode.</summary>
    private int TakeSingleShift(ReadOnlySpan<char> rest, StringBuilder keys)
    {
        var length = 2;
        while (length < rest.Length && char.IsAsciiDigit(rest[length]) && length < 5)
            length++;
        if (length == rest.Length)
            return 0;
        if (!_escapeWasLone)
            keys.Append(SingleShift.Translate(rest[2..length].ToString(), rest[length]));
        _escapeWasLone = false;
        return rest[length] is '\e' or < ' ' ? length : length + 1;
    }

    private static int TakeAlt(ReadOnlySpan<char> rest, StringBuilder keys)
    {
        if (char.IsHighSurrogate(rest[1]) && rest.Length == 2)
            return 0;
        _ = Rune.DecodeFromUtf16(rest[1..], out var rune, out var length);
        return Say(AltKey.Of(rune), keys, 1 + length);
    }

    private int BeginAnswer()
    {
        _inAnswer = true;
        return 2;
    }

    /// <summary>An answer of the terminal goes on to BEL or ESC \, and none of it is anyone's business.</summary>
    private int TakeAnswer(ReadOnlySpan<char> rest)
    {
        var end = rest.IndexOfAny('\a', '\e');
        if (end < 0)
            return rest.Length;
        if (rest[end] == '\e' && end + 1 == rest.Length)
            return end; // 0 when it is all there is: the next character decides
        _inAnswer = false;
        return rest[end] == '\a' ? end + 1 : rest[end + 1] == '\\' ? end + 2 : end;
    }

    private static int Say(string key, StringBuilder keys, int taken)
    {
        keys.Append(key);
        return taken;
    }

    /// <summary>What is left of a key when its Escape came long before, and was taken for a key of its own.</summary>
    private static bool LooksLikeARest(string sent) =>
        sent.StartsWith('[') || sent is ['O', (>= 'A' and <= 'D') or 'F' or 'H' or (>= 'P' and <= 'S')];
}
