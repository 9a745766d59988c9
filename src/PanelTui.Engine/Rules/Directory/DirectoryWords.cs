using System.Collections.Frozen;

namespace PanelTui.Engine.Rules.Directory;

/// <summary>What the words of a directory entry tell. The lists are common practice, no source.</summary>
internal static class DirectoryWords
{
    /// <summary>Blanks and signs part words; the apostrophe belongs to one.</summary>
    private static readonly char[] Breaks =
    [
        .. Enumerable.Range(0, 128).Select(code => (char)code).Where(sign => sign != '\'' && !char.IsLetterOrDigit(sign)),
    ];

    /// <summary>Words that fit any circuit: an entry of these alone tells nothing.</summary>
    private static readonly FrozenSet<string> General = Words(
        "light lights lighting lamps plug plugs outlet outlets receptacle receptacles misc miscellaneous general various other "
        + "others circuit circuits load loads power stuff things unknown unused spare new old main equipment "
        + "appliance appliances motor heat house and or the of in on for to no nr number");

    /// <summary>Words for whoever lives there now, or for now alone.</summary>
    private static readonly FrozenSet<string> Passing = Words(
        "temp temporary temporarily currently now tenant tenants guest guests kid kids baby nursery");

    /// <summary>Possessives that a building keeps whoever uses it.</summary>
    private static readonly FrozenSet<string> Lasting = Words("men's women's gent's lady's driver's caretaker's janitor's");

    public static bool IsGeneral(string entry) => Split(entry).All(word =>
        General.Contains(word) || word is [<= 'z'] || !word.Any(char.IsLetter));

    /// <summary>The word that names a person or a passing use, as it is written; nothing where there is none.</summary>
    public static string? PassingWord(string entry) =>
        Split(entry).FirstOrDefault(word => Passing.Contains(word) || (IsPossessive(word) && !IsLasting(word)));

    /// <summary>An entry without its letters' case and its blanks, so that two that read alike are alike.</summary>
    public static string Plain(string entry) => string.Join(' ', Split(entry)).ToUpperInvariant();

    private static bool IsLasting(string word) => Lasting.Contains(word.Replace('’', '\''));

    private static bool IsPossessive(string word) =>
        word.Length > 2 && word[^2] is '\'' or '’' && word[^1] is 's' or 'S';

    private static string[] Split(string entry) => entry.Split(Breaks, StringSplitOptions.RemoveEmptyEntries);

    private static FrozenSet<string> Words(string words) =>
        words.Split(' ').ToFrozenSet(StringComparer.OrdinalIgnoreCase);
}
