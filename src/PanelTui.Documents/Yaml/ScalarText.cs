namespace PanelTui.Documents.Yaml;

/// <summary>What the characters of a scalar mean to readers of YAML, of version 1.2 and of the older 1.1.</summary>
public static class ScalarText
{
    /// <summary>
    /// What a plain scalar is by the core schema of YAML 1.2.2, section 10.3.2: <c>no</c> and <c>12:30</c> are texts.
    /// </summary>
    public static CoreType Resolve(string plain) => plain switch
    {
        "" or "~" or "null" or "Null" or "NULL" => CoreType.Null,
        "true" or "True" or "TRUE" or "false" or "False" or "FALSE" => CoreType.Boolean,
        ".nan" or ".NaN" or ".NAN" => CoreType.Number,
        _ when IsInteger(plain) => CoreType.WholeNumber,
        _ when IsFloat(plain) => CoreType.Number,
        _ => CoreType.Text,
    };

    /// <summary>
    /// Whether some reader of YAML 1.1 takes the plain scalar for something other than a text: <c>no</c> and <c>on</c> for a
    /// boolean, <c>1_000</c>, <c>12:30</c> and <c>010</c> for numbers, <c>2026-11-25</c> for a date.
    /// </summary>
    public static bool IsTrap(string plain)
    {
        if (plain is "=" or "<<") return true;
        if (plain.Length <= 5 && IsOldBoolean(plain)) return true;
        if (plain.Length == 0 || !plain.AsSpan().ContainsAnyInRange('0', '9')) return false;
        return IsOldNumber(plain) || IsDate(plain);
    }

    private static bool IsOldBoolean(string plain) =>
        plain.ToUpperInvariant() is "Y" or "N" or "YES" or "NO" or "ON" or "OFF" or "TRUE" or "FALSE" or "NULL";

    // Digits with the signs, separators and prefixes that a 1.1 number may have.
    private static bool IsOldNumber(string plain)
    {
        var body = plain.TrimStart('+', '-');
        if (body.Length == 0 || !(char.IsAsciiDigit(body[0]) || body[0] == '.')) return false;
        if (body.StartsWith("0b", StringComparison.OrdinalIgnoreCase) || body.StartsWith("0x", StringComparison.OrdinalIgnoreCase))
            return body[2..].All(c => char.IsAsciiHexDigit(c) || c == '_');
        return body.All(c => char.IsAsciiDigit(c) || c is '_' or ':' or '.' or ',' or 'e' or 'E' or '+' or '-' or 'o');
    }

    private static bool IsDate(string plain) =>
        plain.Length >= 8 && plain[4] == '-' && plain.Take(4).All(char.IsAsciiDigit)
        && plain.All(c => char.IsAsciiDigit(c) || c is '-' or ':' or '.' or '+' or ' ' or 'T' or 't' or 'Z');

    private static bool IsInteger(string plain)
    {
        if (plain.StartsWith("0o", StringComparison.Ordinal))
            return plain.Length > 2 && plain.Skip(2).All(c => c is >= '0' and <= '7');
        if (plain.StartsWith("0x", StringComparison.Ordinal))
            return plain.Length > 2 && plain.Skip(2).All(char.IsAsciiHexDigit);
        var digits = WithoutSign(plain);
        return digits.Length > 0 && !digits.ContainsAnyExceptInRange('0', '9');
    }

    // [-+]? ( \. [0-9]+ | [0-9]+ ( \. [0-9]* )? ) ( [eE] [-+]? [0-9]+ )?   or   [-+]? .inf
    private static bool IsFloat(string plain)
    {
        var body = WithoutSign(plain);
        if (body is ".inf" or ".Inf" or ".INF") return true;
        var whole = DigitsOf(body);
        var rest = body[whole..];
        var fraction = 0;
        if (rest.StartsWith("."))
        {
            fraction = DigitsOf(rest[1..]);
            rest = rest[(1 + fraction)..];
        }

        return whole + fraction > 0 && (rest.IsEmpty || IsExponent(rest));
    }

    private static bool IsExponent(ReadOnlySpan<char> text) =>
        text[0] is 'e' or 'E' && WithoutSign(text[1..]) is { Length: > 0 } digits && DigitsOf(digits) == digits.Length;

    private static int DigitsOf(ReadOnlySpan<char> text)
    {
        var count = text.IndexOfAnyExceptInRange('0', '9');
        return count < 0 ? text.Length : count;
    }

    private static ReadOnlySpan<char> WithoutSign(ReadOnlySpan<char> text) =>
        text is ['+' or '-', ..] ? text[1..] : text;
}
