namespace PanelTui.CommandLine;

/// <summary>What git does with the commands that `git-setup` writes, tried in a small repository of its own.</summary>
/// <param name="Merges">True when changes of two neighboring keys come together; by lines they would be a
/// conflict.</param>
/// <param name="Shows">True when git shows facts instead of the file's lines.</param>
internal sealed record GitTrial(bool Merges, bool Shows)
{
    private const string Name = "sample.panel.yaml";
    private const string Sample = "schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 8}\ncircuits:\n  - {id: one, space: 1, name: One, breaker: 20 A}\n";

    private static readonly string Ours = Sample.Replace("One,", "Two,", StringComparison.Ordinal);
    private static readonly string Theirs = Sample.Replace("20 A", "30 A", StringComparison.Ordinal);
    private static readonly string Both = Ours.Replace("20 A", "30 A", StringComparison.Ordinal);

    private static readonly string[] Plain =
    [
        "-c", "user.name=trial", "-c", "user.email=trial@example.org", "-c", "commit.gpgSign=false",
        "-c", "core.autocrlf=false",
    ];

    /// <summary>Tries our own texts; what else a configuration may hold is never run.</summary>
    public static GitTrial Run()
    {
        var folder = Directory.CreateTempSubdirectory("paneltui-");
        try
        {
            return In(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static GitTrial In(string folder)
    {
        Git.Run(folder, "init", "-q", "--template=");
        foreach (var (key, value) in GitSettings.All) Git.Run(folder, "config", key, value);
        File.WriteAllText(Path.Combine(folder, ".gitattributes"), $"{GitSettings.Attributes}\n");
        Commit(folder, Sample);
        Git.Run(folder, "checkout", "-q", "-b", "theirs");
        Commit(folder, Theirs);
        Git.Run(folder, "checkout", "-q", "-b", "ours", "HEAD~1");
        Commit(folder, Ours);
        var merged = Git.Run(folder, [.. Plain, "merge", "-q", "-m", "both", "theirs"]);
        var shown = Git.Run(folder, "cat-file", "--textconv", $"ours:{Name}");
        return new(
            merged.Succeeded && File.ReadAllText(Path.Combine(folder, Name)) == Both,
            shown.Succeeded && shown.Text.Contains("/circuits[one]/", StringComparison.Ordinal));
    }

    private static void Commit(string folder, string schedule)
    {
        File.WriteAllText(Path.Combine(folder, Name), schedule);
        Git.Run(folder, "add", "-A");
        Git.Run(folder, [.. Plain, "commit", "-q", "-m", "a version"]);
    }
}
