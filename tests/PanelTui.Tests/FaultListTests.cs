using System.Globalization;
using System.Text.RegularExpressions;

namespace PanelTui.Tests;

/// <summary>docs/reliability.md promises tests: they must exist, and no fault may be left out.</summary>
public partial class FaultListTests
{
    private static readonly string[] Rows =
        [.. File.ReadLines(Path.Combine(SourceTree.Root, "docs", "reliability.md")).Where(line => RowStart().IsMatch(line))];

    [Fact]
    public void Every_fault_is_listed_once_and_in_order() =>
        Rows.Select(row => int.Parse(RowStart().Match(row).Groups[1].Value, CultureInfo.InvariantCulture))
            .ShouldBe(Enumerable.Range(1, 68));

    [Fact]
    public void Every_fault_names_a_test_or_the_reason_why_there_is_none() =>
        Rows.AtLeastOne().ShouldAllBe(row => NamedTests.Any(row) || row.Contains("Not tested", StringComparison.Ordinal));

    [Fact]
    public void Every_test_that_is_named_exists() => NamedTests.Missing(Rows).ShouldBeEmpty();

    [GeneratedRegex(@"^\| (\d+) \|")]
    private static partial Regex RowStart();
}
