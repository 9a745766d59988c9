using System.Globalization;

namespace PanelTui.Documents.Reading.Values;

/// <summary>Reads the number of a quantity: `20`, `2.5`, and where it is usual `1/3` and `1 1/2`.</summary>
internal static class WrittenNumber
{
    /// <summary>More digits stand on no nameplate, and a decimal holds them exactly.</summary>
    private const int MostDigits = 15;

    private const NumberStyles PointAndSign = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    private const string TwoRatings =
        "names two ratings; write one, and the two halves of a tandem as two circuits, such as spaces 17a and 17b";

    /// <summary>From here on both sides of a slash are values of their own: `15/20`, `120/240`; a fraction of an inch or a horsepower is smaller.</summary>
    private const int LeastOfTwo = 10;

    private static readonly (char Character, string Share)[] OneCharacterFractions =
    [
        ('½', "1/2"), ('¼', "1/4"), ('¾', "3/4"), ('⅓', "1/3"), ('⅔', "2/3"),
        ('⅛', "1/8"), ('⅜', "3/8"), ('⅝', "5/8"), ('⅞', "7/8"),
    ];

    /// <param name="number">What stands before the unit.</param>
    /// <param name="unit">What stands after it, for the sentence that says how to write it.</param>
    /// <param name="fractions">Whether `1 1/2` is usual for this quantity.</param>
    public static Outcome<decimal> Read(string number, string unit, bool fractions)
    {
        if (number.Count(char.IsAsciiDigit) > MostDigits)
            return Outcome.Refused<decimal>("has more digits than any nameplate");
        if (Plain(number) is { } value) return Outcome.Of(value);
        if (TwoValues(number)) return Outcome.Refused<decimal>(unit == "A" ? TwoRatings : "names two values; write the one that holds here");
        if (Fraction(number) is { } share)
            return fractions ? Outcome.Of(share) : Refused("is a fraction", Show(share), unit);
        return OtherNotation(number, unit);
    }

    private static Outcome<decimal> OtherNotation(string number, string unit)
    {
        if (SpeltOutFraction(number) is { } spelt)
            return Refused("has a fraction in one character", spelt, unit);
        if (Grouped(number) is { } whole && number.Contains(',', StringComparison.Ordinal))
            return Refused("has a comma", $"{Show(whole)}{Space(unit)}{unit}, or {number.Replace(',', '.')}", unit);
        if (Grouped(number) is { } grouped) return Refused("has a thousands separator", Show(grouped), unit);
        if (number.Count(letter => letter == ',') == 1 && Plain(number.Replace(',', '.')) is { } point)
            return Refused("has a decimal comma", Show(point), unit);
        return Outcome.Refused<decimal>("is not a number that can be read; write it like 20 or 2.5");
    }

    private static decimal? Plain(string number) =>
        decimal.TryParse(number, PointAndSign, CultureInfo.InvariantCulture, out var value)
        && !number.EndsWith('.') && !number.StartsWith('+')
            ? value
            : null;

    /// <summary>`1/3`, `1 1/2` and `1-1/2`, as motors are marked.</summary>
    private static decimal? Fraction(string number)
    {
        var parts = number.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is 0 or > 2 || number.StartsWith('-')) return null;
        var whole = parts.Length == 2 ? Whole(parts[0]) : 0;
        var halves = parts[^1].Split('/');
        if (halves.Length != 2 || whole is null) return null;
        return Whole(halves[0]) is { } over && Whole(halves[1]) is > 0 and { } under ? whole + (over / under) : null;
    }

    /// <summary>`15/20` is no share but two numbers.</summary>
    private static bool TwoValues(string number) =>
        number.Split('/') is [var one, var other] && Plain(one.Trim()) >= LeastOfTwo && Plain(other.Trim()) >= LeastOfTwo;

    /// <summary>
    /// The two readings of a number with exactly three decimals, 1500 and 1.5 for `1.500`: in much of the world its point groups
    /// thousands. Null for a number with one reading.
    /// </summary>
    public static (string Thousands, string Decimals)? TwoReadings(string number)
    {
        if (number.Split('.') is not [{ Length: > 0 and <= 3 } whole, { Length: 3 } rest]) return null;
        if (whole[0] == '0' || !(whole + rest).All(char.IsAsciiDigit)) return null;
        return (whole + rest, rest.EndsWith('0') ? Show(decimal.Parse(number, PointAndSign, CultureInfo.InvariantCulture)) : $"{number}0");
    }

    private static decimal? Whole(string digits) =>
        decimal.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : null;

    /// <summary>`1½` as `1 1/2`; nothing where there is no such character.</summary>
    internal static string? SpeltOutFraction(string number)
    {
        foreach (var (character, share) in OneCharacterFractions)
        {
            var at = number.IndexOf(character, StringComparison.Ordinal);
            if (at >= 0) return $"{number[..at].Trim()} {share}".Trim();
        }

        return null;
    }

    /// <summary>The number with its groups of three joined: `1,500`, `1 500`, `1_500`, `1'500`.</summary>
    private static decimal? Grouped(string number)
    {
        var whole = number.Split('.')[0];
        var groups = whole.Split([',', ' ', '_', '\'', '\u2019', '\u00A0', '\u202F']);
        var areOfThree = groups[0].Length is > 0 and <= 3 && groups.Skip(1).All(group => group.Length == 3);
        return groups.Length > 1 && areOfThree ? Plain(string.Concat(groups) + number[whole.Length..]) : null;
    }

    private static string Show(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Space(string unit) => unit.Length == 0 || unit == "x" ? "" : " ";

    private static Outcome<decimal> Refused(string what, string number, string unit) =>
        Outcome.Refused<decimal>($"{what}; write {number}{Space(unit)}{unit}");
}
