using System.Text;
using System.Text.RegularExpressions;

namespace PanelTui.Sheets.Formats;

/// <summary>
/// What the PDF library draws from the clock and by lot, put to fixed values of the same length, so that the same sheet gives the
/// same bytes: two dates, two identifiers in the metadata, the file's own, and the tag before the name of an embedded font.
/// </summary>
internal static partial class PdfStamps
{
    private const string AnyDay = "20000101000000+00'00'";

    /// <summary>No length changes, so that the table of places stays right.</summary>
    public static byte[] Fixed(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        text = Dates().Replace(text, $"${{1}}{AnyDay}");
        text = MetadataDates().Replace(text, "${1}2000-01-01T00:00:00+00:00");
        text = Identifiers().Replace(text, match => match.Groups[1].Value + new string('0', match.Groups[2].Length));
        text = FileIdentifiers().Replace(text, $"/ID[<{new string('0', 32)}><{new string('0', 32)}>]");
        return Encoding.Latin1.GetBytes(TagsInOrder(text));
    }

    /// <summary>Each font, with its tag drawn by lot, gets the tag AAAAAA, AAAAAB and so on, in the order in which they first stand there.</summary>
    private static string TagsInOrder(string text)
    {
        var known = new Dictionary<string, string>();
        return FontTags().Replace(text, match =>
        {
            if (!known.TryGetValue(match.Value, out var tag)) known[match.Value] = tag = $"AAAAA{(char)('A' + known.Count)}";
            return $"/{tag}+{match.Groups[1].Value}";
        });
    }

    [GeneratedRegex(@"(/(?:CreationDate|ModDate)\(D:)\d{14}[+-]\d\d'\d\d'")]
    private static partial Regex Dates();

    [GeneratedRegex(@"(<xmp:(?:Create|Modify)Date>)\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d")]
    private static partial Regex MetadataDates();

    [GeneratedRegex("(<xmpMM:(?:Document|Instance)ID>uuid:)([0-9a-f-]{36})")]
    private static partial Regex Identifiers();

    [GeneratedRegex(@"/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\]")]
    private static partial Regex FileIdentifiers();

    [GeneratedRegex(@"/[A-Z]{6}\+(DejaVu[^\s/<>\[\]()]*)")]
    private static partial Regex FontTags();
}
