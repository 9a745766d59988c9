using System.Globalization;

namespace PanelTui.Terminal;

/// <summary>The keys and mouse reports among the sequences that begin with ESC [; all others are answers, or unknown.</summary>
internal static class ControlSequence
{
    /// <summary>No key is longer; what is, is noise.</summary>
    private const int Longest = 64;

    private static readonly string[] LinuxFunctionKeys = ["\eOP", "\eOQ", "\eOR", "\eOS", "\e[15~"];

    /// <summary>The length of the whole sequence at the start of a text.</summary>
    /// <returns>0 when it is not whole yet; minus the characters to drop when it never will be.</returns>
    public static int LengthOf(ReadOnlySpan<char> text)
    {
        if (text.StartsWith("\e[[", StringComparison.Ordinal))
            return Whole(text, 4); // a function key of the Linux console
        if (text.StartsWith("\e[M", StringComparison.Ordinal))
            return Whole(text, 6); // a mouse report of the oldest kind
        for (var at = 2; at < text.Length; at++)
        {
            if (IsFinal(text, at))
                return at + 1;
            if (text[at] is < ' ' or > '?' || at > Longest)
                return -at;
        }

        return 0;
    }

    /// <summary>The key as the library knows it; nothing for what is no key.</summary>
    public static string Translate(string sequence)
    {
        var parameters = sequence[2..^1];
        var final = sequence[^1];
        if (sequence.StartsWith("\e[[", StringComparison.Ordinal))
            return final is >= 'A' and <= 'E' ? LinuxFunctionKeys[final - 'A'] : "";
        if (parameters.StartsWith('<'))
            return final is 'M' or 'm' && IsMouseReport(parameters[1..]) ? sequence : "";
        return Numbers(parameters) is not { } numbers ? "" : final switch
        {
            '~' => Tilde(numbers),
            '^' => RxvtTilde(numbers, 5),
            '$' => RxvtTilde(numbers, 2),
            '@' => RxvtTilde(numbers, 6),
            'u' when numbers.Length > 0 => sequence,
            'A' or 'B' or 'C' or 'D' or 'F' or 'H' or 'P' or 'Q' or 'S' or 'Z' => IsKey(numbers) ? sequence : "",
            >= 'a' and <= 'd' when numbers.Length == 0 => $"\e[1;2{char.ToUpperInvariant(final)}",
            _ => "",
        };
    }

    private static bool IsFinal(ReadOnlySpan<char> text, int at) =>
        text[at] is >= '@' and <= '~'
        || (text[at] == '$' && at > 2 && !text[..at].ContainsAny(';', '?')); // rxvt ends a key with a dollar

    private static int Whole(ReadOnlySpan<char> text, int length)
    {
        var escape = text[1..].IndexOf('\e') + 1;
        if (escape > 0 && escape < length)
            return -escape;
        return text.Length < length ? 0 : length;
    }

    /// <summary>The numbers between semicolons, each up to its colon; none when anything else stands among them.</summary>
    private static int[]? Numbers(string parameters)
    {
        if (parameters.Length == 0)
            return [];
        var numbers = parameters.Split(';')
            .Select(part => part.Split(':')[0])
            .Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1)
            .ToArray();
        return numbers.Contains(-1) || numbers.Any(number => number > 0x10FFFF) ? null : numbers;
    }

    /// <summary>Bare, or with a modifier from Shift (2) to all of them (16); a cursor report looks otherwise.</summary>
    private static bool IsKey(int[] numbers) => numbers is [] or [1, >= 1 and <= 16];

    private static bool IsMouseReport(string parameters) =>
        Numbers(parameters) is [< 256, >= 1 and < 10_000, >= 1 and < 10_000];

    private static string Tilde(int[] numbers) => numbers switch
    {
        [7] => "\e[H",
        [8] => "\e[F",
        [7, >= 1 and <= 16] => $"\e[1;{numbers[1]}H",
        [8, >= 1 and <= 16] => $"\e[1;{numbers[1]}F",
        [27, >= 1 and <= 16, > 0] => $"\e[{numbers[2]};{numbers[1]}u",
        [var key] when IsKnown(key) => $"\e[{key}~",
        [var key, >= 1 and <= 16 and var modifier] when IsKnown(key) => $"\e[{key};{modifier}~",
        _ => "",
    };

    private static string RxvtTilde(int[] numbers, int modifier) => numbers is [var key] ? Tilde([key, modifier]) : "";

    /// <summary>Insert to Page Down, and F1 to F12.</summary>
    private static bool IsKnown(int key) => key is (>= 1 and <= 6) or (>= 11 and <= 15) or (>= 17 and <= 21) or 23 or 24;
}
