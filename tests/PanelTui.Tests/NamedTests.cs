using System.Text.RegularExpressions;

namespace PanelTui.Tests;

/// <summary>Tests that a page of the documents names, as `Class.Test`.</summary>
internal static partial class NamedTests
{
    private static readonly HashSet<string> Known = [.. SourceTree.Files("tests").SelectMany(In)];

    public static bool Any(string row) => Name().IsMatch(row);

    /// <summary>Those that are named and do not exist.</summary>
    public static IEnumerable<string> Missing(IEnumerable<string> rows) =>
        rows.SelectMany(row => Name().Matches(row)).Select(match => match.Groups[1].Value).Distinct().Where(name => !Known.Contains(name));

    private static IEnumerable<string> In(string file) =>
        Test().Matches(File.ReadAllText(file)).Select(match => $"{Path.GetFileNameWithoutExtension(file)}.{match.Groups[1].Value}");

    [GeneratedRegex(@"`(\w+Tests\.\w+)`")]
    private static partial Regex Name();

    [GeneratedRegex(@"^    public (?:async Task|void|Task) (\w+_\w+)\(", RegexOptions.Multiline)]
    private static partial Regex Test();
}
