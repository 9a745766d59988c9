using System.Globalization;
using System.Text.RegularExpressions;

namespace PanelTui.Tests;

/// <summary>docs/reliability.md promises tests: they must exist, and no fault may be left out.</summary>
public partial class FaultListTests
{
    private static readonly string[] Rows =
        [.. File.ReadLines(Path.Combine(SourceTree.Root, "docs", "reliability.md")).Where(line => RowStart().IsMatch(line))];

    private static readonly HashSet<string> Tests = [.. SourceTree.Files("tests").SelectMany(TestsIn)];

    [Fact]
    public void Every_fault_is_listed_once_and_in_order() =>
        Rows.Select(row => int.Parse(RowStart().Match(row).Groups[1].Value, CultureInfo.InvariantCulture))
            .ShouldBe([.. Enumerable.Range(1, 44), .. Enumerable.Range(59, 8)]);

    [Fact]
    public void Every_fault_names_a_test_or_the_reason_why_there_is_none() =>
        Rows.ShouldAllBe(row => TestName().IsMatch(row) || row.Contains("Not tested", StringComparison.Ordinal));

    [Fact]
    public void Every_test_that_is_named_exists() =>
        Rows.SelectMany(row => TestName().Matches(row)).Select(match => match.Groups[1].Value).Distinct().Where(name => !Tests.Contains(name)).ShouldBeEmpty();

    private static IEnumerable<string> TestsIn(string file) =>
        Test().Matches(File.ReadAllText(file)).Select(match => $"{Path.GetFileNameWithoutExtension(file)}.{match.Groups[1].Value}");

    [GeneratedRegex(@"^\| (\d+) \|")]
    private static partial Regex RowStart();

    [GeneratedRegex(@"`(\w+Tests\.\w+)`")]
    private static partial Regex TestName();

    [GeneratedRegex(@"^    public (?:async Task|void|Task) (\w+_\w+)\(", RegexOptions.Multiline)]
    private static partial Regex Test();
}
