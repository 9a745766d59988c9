using System.Globalization;

namespace PanelTui.CommandLine;

/// <summary>Runs the commands that a clone names, as git would, on a small schedule: what is set up may still not run.</summary>
internal static class GitTrial
{
    private const string Sample = "schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 8}\ncircuits:\n  - {id: one, space: 1, name: One, breaker: 20 A}\n";

    /// <summary>Whether facts come out, not the file's own lines.</summary>
    public static bool ShowsFacts(string textconv) => InFolder(folder =>
    {
        var file = Written(folder, "sample.panel.yaml", Sample);
        return Run(folder, $"{textconv} \"$@\"", file) is { Code: 0, Out: var shown } && shown.Contains("/circuits[one]/", StringComparison.Ordinal);
    });

    /// <summary>Whether changes of two keys that lie side by side come together: lines would be a conflict.</summary>
    public static bool MergesByMeaning(string driver) => InFolder(folder =>
    {
        var (ours, theirs) = (Sample.Replace("One,", "Two,", StringComparison.Ordinal), Sample.Replace("20 A", "30 A", StringComparison.Ordinal));
        var versions = new Dictionary<string, string>
        {
            ["%O"] = Written(folder, "base.yaml", Sample),
            ["%A"] = Written(folder, "ours.yaml", ours),
            ["%B"] = Written(folder, "theirs.yaml", theirs),
            ["%L"] = 7.ToString(CultureInfo.InvariantCulture),
            ["%P"] = "sample.panel.yaml",
        };
        var command = versions.Aggregate(driver, (line, version) => line.Replace(version.Key, version.Value, StringComparison.Ordinal));
        return Run(folder, command).Code == 0
            && File.ReadAllText(versions["%A"]) == ours.Replace("20 A", "30 A", StringComparison.Ordinal);
    });

    private static string Written(string folder, string name, string text)
    {
        var path = Path.Combine(folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static bool InFolder(Func<string, bool> attempt)
    {
        var folder = Directory.CreateTempSubdirectory("paneltui-");
        try
        {
            return attempt(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (int Code, string Out) Run(string folder, string command, params string[] arguments)
    {
        var (code, shown, _) = OutsideProgram.Run("sh", folder, [], ["-c", command, "git", .. arguments]);
        return (code, System.Text.Encoding.UTF8.GetString(shown));
    }
}
