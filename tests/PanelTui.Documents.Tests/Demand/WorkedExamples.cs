using System.Text.RegularExpressions;
using PanelTui.Documents.Tests.Reading;

namespace PanelTui.Documents.Tests.Demand;

/// <summary>The worked examples that were collected, by their numbers: each runs as a case, or is left out for a reason.</summary>
internal static partial class WorkedExamples
{
    private const string All = """
        A01 A02 A04 A05 A06 A08 A08b A09 A10 A11 A12 A14 A16 A17 A18 A19 A20 A21 A22 A23 A25
        B03 B06 B07 B08 B09 B10 B11 B12 B14 B15 B16 B18 B19 B20 B21 B22 B23 B24 B25 B26 B27 B28 B29 B30 B31 B32 B34 B35 B36
        B37 B38 B40 B41 B42
        C03 C04 C07 C08 C09 C11 C12 C13 C14 C15
        D01 D02 D03 D04 D05 D06 D07 D08 D09 D11 D12 D14 D15 D16 D17
        """;

    public static string[] Ids => All.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The rows of left-out.md: a number and a reason.</summary>
    public static (string Id, string Reason)[] LeftOut =>
    [
        .. Row().Matches(House.Case("demand", "left-out.md"))
            .Select(row => (row.Groups["id"].Value, row.Groups["reason"].Value)),
    ];

    [GeneratedRegex(@"^\| (?<id>[A-D]\d\d[a-z]?) \| [^|]+ \| (?<reason>[^|]+) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
