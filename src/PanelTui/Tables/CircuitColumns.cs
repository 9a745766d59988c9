using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents.Intents;
using PanelTui.Engine;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.Tables;

/// <summary>The columns of the table of breakers, in the order in which they stand; the first ones stay in sight.</summary>
internal static class CircuitColumns
{
    /// <summary>How many stay in sight while the others are walked through.</summary>
    public const int Kept = 3;

    public static readonly ImmutableArray<CircuitColumn> All =
    [
        Of("Space", 5, "space") with { IsRight = true, Number = row => row.Circuit.Space.Number + ((int)row.Circuit.Space.Half / 10m) },
        Of("Breaker", 8, "breaker") with { Number = row => row.Circuit.Breaker.Rating.Value },
        Of("Name", 20, "name"),
        new("Poles", 5, row => Whole(row.Circuit.Breaker.Poles)) { Key = "poles", IsRight = true, Number = row => row.Circuit.Breaker.Poles },
        new("VA", 6, row => Shown.Rounded(row.VoltAmperes, 0)) { IsRight = true, Number = row => row.VoltAmperes },
        new("W", 6, row => Shown.Rounded(row.Watts, 0)) { IsRight = true, Number = row => row.Watts },
        new("Kind", 14, KindsOf) { Key = CircuitColumn.Kind },
        new("Standby", 7, row => row.Circuit.Standby ? "yes" : "no") { Key = "standby" },
        Of("Priority", 8, "priority") with { IsRight = true, Number = row => row.Circuit.Priority },
        new("Findings", 9, FindingsOf) { IsFindings = true, Number = row => row.Findings.IsEmpty ? null : row.Findings.Sum(WeightOf) },
        new("Load", 30, row => LoadPhrase.Of(row.File, row.Circuit.Ordinal)) { Key = CircuitColumn.Loads },
        Of("Protection", 13, "protection"),
        Of("Wire", 10, "wire"),
        Of("Length", 7, "length") with { Number = row => row.Circuit.Length?.Value },
        Of("Spare", 5, "spare"),
        Of("Multiwire", 10, "multiwire"),
        Of("Tied", 4, "tied"),
        Of("Fixed", 5, "fixed"),
        Of("Places", 18, "places"),
        Of("Moved from", 18, "moved_from"),
        Of("Neutral moved", 13, "neutral_moved"),
        Of("Verified", 10, "verified"),
        Of("Id", 18, "id"),
    ];

    /// <summary>Those that are written into the file, each key once.</summary>
    public static IEnumerable<CircuitColumn> Copied => All.Where(column => column.Key is not null and not CircuitColumn.Kind);

    private static CircuitColumn Of(string title, int columns, string key) => new(title, columns, row => row.Written(key)) { Key = key };

    private static string KindsOf(CircuitRow row) => string.Join(" + ", Enumerable.Range(0, row.Circuit.Loads.Length)
        .Select(load => FieldValue.At(row.File, Places.Load(row.Circuit.Ordinal, load).Then("kind"))).OfType<string>().Distinct());

    /// <summary>`E`, `2 W`: how many of each severity, the worst first.</summary>
    private static string FindingsOf(CircuitRow row) => string.Join(' ', row.Findings
        .GroupBy(finding => finding.Severity)
        .OrderByDescending(group => WeightOf(group.First()))
        .Select(group => $"{(group.Count() > 1 ? Whole(group.Count()) : "")}{group.Key.Mark}"));

    /// <summary>One error weighs more than all the warnings that a circuit may have.</summary>
    private static decimal WeightOf(Finding finding) => finding.Severity switch
    {
        Severity.Error => 10_000,
        Severity.Warning => 100,
        Severity.Note => 1,
        _ => throw Unnamed.Of(finding.Severity),
    };

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
