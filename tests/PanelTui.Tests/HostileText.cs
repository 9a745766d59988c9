using System.Text.RegularExpressions;
using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Tests;

/// <summary>A schedule with every key of the format, and in each of its free texts what would drive, hide or turn a terminal's text.</summary>
internal static class HostileText
{
    /// <summary>As YAML writes it between double quotes: title, clipboard, erase, a C1 introducer, turned and hidden text, bell, backspace.</summary>
    public const string Escaped = @"\e]0;gone\a\e]52;c;cm0=\a\e[2J\u009b31m\u202eexe\u202c\u200b\u2066\ufeff\x7f\bx";

    /// <summary>The same as a file name may have it.</summary>
    public const string InAName = "\e]0;gone\a\e[2J\u202eexe\u200b";

    /// <summary>Ids and what refers to them: letters and digits alone, or the file is refused.</summary>
    private static readonly string[] Names = ["id", "running", "except", "starting", "rule"];

    public static readonly string Schedule = WithEvery(
        File.ReadAllText(Path.Combine(SourceTree.Root, "tests", "Cases", "reading", "every-key.yaml")));

    private static readonly HashSet<int> Drives =
        [.. Enumerable.Range(0, 32).Where(rune => rune != '\n'), .. Enumerable.Range(0x7f, 33), 0x200b, 0x200d, 0x202c, 0x202e, 0x2066, 0x2069, 0xfeff];

    public static void ShouldDriveNothing(string shown, string where) =>
        shown.Replace("\r\n", "\n", StringComparison.Ordinal).EnumerateRunes().Select(rune => rune.Value).Where(Drives.Contains).Select(rune => $"U+{rune:X4}").Distinct().ShouldBeEmpty(where);

    private static string WithEvery(string text) => FieldBook.All
        .GroupBy(field => field.Key)
        .Where(fields => fields.All(field => field.IsFreeText) && !Names.Contains(fields.Key))
        .Aggregate(text, (so, fields) => Regex.Replace(so, $@"(?m)(^ *(?:- )?{fields.Key}: )(.+)$|(?<=[{{,] )({fields.Key}: )([^,}}]+)", match =>
            $"{match.Groups[1].Value}{match.Groups[3].Value}\"{match.Groups[2].Value}{match.Groups[4].Value} {Escaped}\""));
}
