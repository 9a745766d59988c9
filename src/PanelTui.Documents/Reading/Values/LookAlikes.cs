using System.Collections.Frozen;

namespace PanelTui.Documents.Reading.Values;

/// <summary>
/// Characters that a keyboard or a copied text puts in the place of those that units, keys and choices are made of.
/// </summary>
/// <remarks>A selection from confusables.txt of Unicode Technical Standard 39, and the full-width forms, U+FF01 to U+FF5E.</remarks>
internal static class LookAlikes
{
    private const char FirstFullWidth = '\uFF01';
    private const char LastFullWidth = '\uFF5E';
    private const int FromFullWidth = 0xFEE0;

    private static readonly FrozenDictionary<char, LookAlike> Known = new LookAlike[]
    {
        Letter('А', "A", "Cyrillic", "A"),
        Letter('В', "B", "Cyrillic", "Ve"),
        Letter('С', "C", "Cyrillic", "Es"),
        Letter('Е', "E", "Cyrillic", "Ie"),
        Letter('Н', "H", "Cyrillic", "En"),
        Letter('І', "I", "Cyrillic", "Byelorussian-Ukrainian I"),
        Letter('Ј', "J", "Cyrillic", "Je"),
        Letter('К', "K", "Cyrillic", "Ka"),
        Letter('М', "M", "Cyrillic", "Em"),
        Letter('О', "O", "Cyrillic", "O"),
        Letter('Р', "P", "Cyrillic", "Er"),
        Letter('Ѕ', "S", "Cyrillic", "Dze"),
        Letter('Т', "T", "Cyrillic", "Te"),
        Letter('У', "Y", "Cyrillic", "U"),
        Letter('Х', "X", "Cyrillic", "Ha"),
        Letter('Ү', "Y", "Cyrillic", "Straight U"),
        Letter('Һ', "H", "Cyrillic", "Shha"),
        Letter('Ԝ', "W", "Cyrillic", "We"),
        Letter('Ѵ', "V", "Cyrillic", "Izhitsa"),
        Letter('а', "a", "Cyrillic", "small A"),
        Letter('с', "c", "Cyrillic", "small Es"),
        Letter('е', "e", "Cyrillic", "small Ie"),
        Letter('һ', "h", "Cyrillic", "small Shha"),
        Letter('і', "i", "Cyrillic", "small Byelorussian-Ukrainian I"),
        Letter('ј', "j", "Cyrillic", "small Je"),
        Letter('к', "k", "Cyrillic", "small Ka"),
        Letter('м', "m", "Cyrillic", "small Em"),
        Letter('о', "o", "Cyrillic", "small O"),
        Letter('р', "p", "Cyrillic", "small Er"),
        Letter('ѕ', "s", "Cyrillic", "small Dze"),
        Letter('т', "t", "Cyrillic", "small Te"),
        Letter('у', "y", "Cyrillic", "small U"),
        Letter('х', "x", "Cyrillic", "small Ha"),
        Letter('ԛ', "q", "Cyrillic", "small Qa"),
        Letter('ԝ', "w", "Cyrillic", "small We"),
        Letter('ѵ', "v", "Cyrillic", "small Izhitsa"),
        Letter('ԁ', "d", "Cyrillic", "small Komi De"),
        Letter('Α', "A", "Greek", "Alpha"),
        Letter('Β', "B", "Greek", "Beta"),
        Letter('Ε', "E", "Greek", "Epsilon"),
        Letter('Ζ', "Z", "Greek", "Zeta"),
        Letter('Η', "H", "Greek", "Eta"),
        Letter('Ι', "I", "Greek", "Iota"),
        Letter('Κ', "K", "Greek", "Kappa"),
        Letter('Μ', "M", "Greek", "Mu"),
        Letter('Ν', "N", "Greek", "Nu"),
        Letter('Ο', "O", "Greek", "Omicron"),
        Letter('Ρ', "P", "Greek", "Rho"),
        Letter('Τ', "T", "Greek", "Tau"),
        Letter('Υ', "Y", "Greek", "Upsilon"),
        Letter('Χ', "X", "Greek", "Chi"),
        Letter('α', "a", "Greek", "small Alpha"),
        Letter('ι', "i", "Greek", "small Iota"),
        Letter('κ', "k", "Greek", "small Kappa"),
        Letter('ν', "v", "Greek", "small Nu"),
        Letter('ο', "o", "Greek", "small Omicron"),
        Letter('ρ', "p", "Greek", "small Rho"),
        Letter('τ', "t", "Greek", "small Tau"),
        Letter('υ', "u", "Greek", "small Upsilon"),
        Letter('χ', "x", "Greek", "small Chi"),
        Letter('ω', "w", "Greek", "small Omega"),
        new('\u212A', "K", "the kelvin sign"),
        new('\u2010', "-", "the hyphen of typesetters"),
        new('\u2011', "-", "the non-breaking hyphen"),
        new('\u2012', "-", "the figure dash"),
        new('\u2013', "-", "the en dash"),
        new('\u2014', "-", "the em dash"),
        new('\u2015', "-", "the horizontal bar"),
        new('\u2212', "-", "the minus sign"),
        new('\uFE63', "-", "the small hyphen-minus"),
        new('\u2044', "/", "the fraction slash"),
        new('\u2215', "/", "the division slash"),
        new('\u00A0', " ", "a no-break space"),
        new('\u2007', " ", "a figure space"),
        new('\u2009', " ", "a thin space"),
        new('\u202F', " ", "a narrow no-break space"),
        new('\u2002', " ", "an en space"),
        new('\u2003', " ", "an em space"),
        new('\u200A', " ", "a hair space"),
        new('\u3000', " ", "an ideographic space"),
        new('\u200B', "", "a zero width space"),
        new('\u200C', "", "a zero width non-joiner"),
        new('\u200D', "", "a zero width joiner"),
        new('\u2060', "", "a word joiner"),
        new('\u00AD', "", "a soft hyphen"),
        new('\uFEFF', "", "a byte order mark"),
        new('\u200E', "", "a left-to-right mark"),
        new('\u200F', "", "a right-to-left mark"),
    }.ToFrozenDictionary(one => one.Found);

    /// <summary>
    /// Reads a value, and where it can only be read once its look-alikes are replaced, refuses it and names the first of them.
    /// </summary>
    public static Outcome<T> Read<T>(string text, Func<string, Outcome<T>> read)
        where T : notnull
    {
        var outcome = read(text);
        if (outcome.Succeeded || First(text) is not { } first) return outcome;
        var plain = Plain(text).Trim();
        return read(plain).Succeeded
            ? Outcome.Refused<T>($"is {Quoted.Of(text)}; {first.Sentence}; write {plain}")
            : outcome;
    }

    /// <summary>What is wrong with a word that is one of the known ones but for look-alikes, and how to write it; null for another word.</summary>
    public static string? WhyNot(string word, IEnumerable<string> known) =>
        First(word) is { } first && Plain(word).Trim() is var plain && known.Contains(plain) ? $"{first.Sentence}; write {plain}" : null;

    private static LookAlike? First(string text) => text.Select(Of).FirstOrDefault(found => found is not null);

    private static string Plain(string text) => string.Concat(text.Select(letter => Of(letter)?.Plain ?? $"{letter}"));

    private static LookAlike? Of(char letter) => letter is >= FirstFullWidth and <= LastFullWidth
        ? FullWidth(letter, (char)(letter - FromFullWidth))
        : Known.GetValueOrDefault(letter);

    private static LookAlike FullWidth(char letter, char plain) => new(
        letter, $"{plain}", $"the full-width {(char.IsAsciiLetter(plain) ? "letter" : char.IsAsciiDigit(plain) ? "digit" : "sign")} {plain}");

    private static LookAlike Letter(char found, string plain, string script, string name) => new(found, plain, $"the {script} letter {name}");
}
