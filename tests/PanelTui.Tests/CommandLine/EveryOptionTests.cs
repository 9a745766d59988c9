using System.Collections.Immutable;
using PanelTui.CommandLine;

namespace PanelTui.Tests.CommandLine;

/// <summary>
/// No option is silently ignored: with any others, each either changes what the command prints or writes, or is refused with a
/// sentence and exit 2. Sets of up to three by default; with PANELTUI_CAMPAIGN set, every set.
/// </summary>
public sealed class EveryOptionTests : IDisposable
{
    private readonly TempFolder _folder = new();

    /// <summary>A command with what it is given, and its options with a value that differs from the usual one.</summary>
    /// <param name="Files">The files that are there when it begins.</param>
    private sealed record Scene(string Name, string[] Given, string[][] Options, params (string Name, string Text)[] Files)
    {
        /// <summary>What a person types; null where none sits there.</summary>
        public string[]? Answers { get; init; }
    }

    private static string Clash(string text) => text.Replace("space: 3\n", "space: 1\n", StringComparison.Ordinal);

    private static readonly (string, string) Sound = ("shed.yaml", Shed.Text);

    private static string Charged(string by) => File.ReadAllText(Shed.Example("packing-shed")).Replace("from: grid", $"from: {by}", StringComparison.Ordinal);

    private static string Pump(string name) => Shed.Text.Replace("Well pump", name, StringComparison.Ordinal);

    private static readonly ImmutableArray<Scene> Scenes =
    [
        new("check", ["check", "shed.yaml"], [["--json"], ["--quiet"], ["--severity", "error"], ["--color", "always"]], ("shed.yaml", Clash(Charged("grid")))),
        new("calc", ["calc", "shed.yaml"], [["--json"], ["--why", "neutral"]], Sound),
        new("run with grid", ["run", "shed.yaml"], [["--scenario", "Sunday, nobody in"], ["--from", "80%"], ["--at", "18"], ["--grid"], ["--table"], ["--json"]], ("shed.yaml", Charged("grid"))),
        new("run without", ["run", "shed.yaml"], [["--from", "80%"], ["--outage"], ["--table"], ["--json"]], ("shed.yaml", Charged("generator"))),
        new("balance", ["balance", "shed.yaml"], [["--moves", "1"], ["--by", "scenario", "Harvest night"], ["--json"], ["--write"], ["--dry-run"]],
            ("shed.yaml", Charged("grid"))),
        new("transfer", ["transfer", "shed.yaml"], [["--json"]], Sound),
        new("rules", ["rules", "neutral"], [["--json"]]),
        new("info", ["info"], [["--json"]]),
        new("print directory", ["print", "directory", "shed.yaml"],
            [["-o", "out.html"], ["--format", "csv"], ["--paper", "a4"], ["--tape", "9"], ["--force"], ["--quiet"], ["--json"], ["--dry-run"]], Sound, ("out.html", "old")),
        new("print labels", ["print", "labels", "shed.yaml"],
            [["-o", "out.svg"], ["--format", "pdf"], ["--paper", "a4"], ["--tape", "9"], ["--force"], ["--quiet"], ["--json"], ["--dry-run"]], Sound, ("out.svg", "old")),
        new("print all", ["print", "all", "shed.yaml", "--format", "text"], [["-o", "permit"], ["--tape", "24"], ["--quiet"], ["--json"], ["--dry-run"]], Sound),
        new("new", ["new", "made.yaml"], [["--template"], ["--quiet"], ["--dry-run"]]) { Answers = [.. Enumerable.Repeat("", 40)] },
        new("diff", ["diff", "shed.yaml", "other.yaml"], [["--json"], ["--markdown"], ["--quiet"], ["--textconv"], ["--color", "always"]], Sound, ("other.yaml", Pump("Barn pump"))),
        new("diff of one", ["diff", "shed.yaml"], [["--textconv"], ["--json"], ["--color", "always"]], Sound),
        new("merge", ["merge", "base.yaml", "ours.yaml", "theirs.yaml"], [["--output", "merged.yaml"], ["--marker-size", "9"], ["--path", "shed"], ["--json"], ["--dry-run"]],
            ("base.yaml", Shed.Text), ("ours.yaml", Pump("Barn pump")), ("theirs.yaml", Pump("Yard pump"))),
    ];

    /// <summary>Options that no scene can show: what they promise holds for every command, or only time shows it.</summary>
    private static readonly string[] Apart = ["--help", "--seconds"];

    public static TheoryData<string> SceneNames => [.. Scenes.Select(scene => scene.Name)];

    [Theory, MemberData(nameof(SceneNames))]
    public void Each_option_changes_something_or_is_refused(string name)
    {
        var scene = Scenes.Single(one => one.Name == name);
        var seen = new Dictionary<string, Outcome>();
        var most = Environment.GetEnvironmentVariable("PANELTUI_CAMPAIGN") is { Length: > 0 } ? scene.Options.Length : 3;
        var checkedSets = 0;
        foreach (var chosen in Sets(scene.Options.Length, most).AtLeastOne())
        {
            var with = Run(scene, chosen, seen);
            if (with.IsRefused)
            {
                with.Ran.Error.ShouldStartWith("paneltui: ");
                continue;
            }

            Telling(scene, chosen)
                .Where(option => with == Run(scene, [.. chosen.Where(one => one != option)], seen))
                .Select(option => $"{string.Join(' ', Words(scene, chosen))}: {scene.Options[option][0]} is ignored")
                .ShouldBeEmpty();

            checkedSets++;
        }

        checkedSets.ShouldBeGreaterThanOrEqualTo(scene.Options.Length / 2);
    }

    [Fact]
    public void Each_option_of_each_command_stands_in_a_scene()
    {
        var streams = new Streams(() => Stream.Null, TextWriter.Null, TextWriter.Null);
        foreach (var verb in Verbs.All.Where(verb => verb is not GitSetupVerb).AtLeastOne())
        {
            var options = verb.Build(streams).Options.Select(option => option.Aliases.Prepend(option.Name).ToList()).ToList();
            var shown = Scenes.Where(scene => scene.Given[0] == verb.Name).SelectMany(scene => scene.Options.Select(option => option[0])).Concat(Apart).ToHashSet();
            options.Where(names => !names.Any(shown.Contains)).Select(names => $"{verb.Name} {names[0]}").ShouldBeEmpty();
        }
    }

    [Fact]
    public void Each_option_of_the_set_up_of_git_changes_something_or_is_refused()
    {
        var folder = Path.GetDirectoryName(_folder.File("x"))!;
        var seen = new List<string>();
        foreach (var (check, json, dry) in ((bool, bool, bool)[])[(false, false, false), (true, false, false), (false, true, false), (true, true, false), (false, false, true), (false, true, true)])
        {
            Clear(folder);
            PanelTui.CommandLine.Git.Run(folder, "init", "-q").Succeeded.ShouldBeTrue();
            using var output = new StringWriter();
            var code = GitSetupVerb.Run(folder, check, new Streams(() => Stream.Null, output, TextWriter.Null) { WritesNothing = dry }, json);
            seen.Add($"{code} {output} {File.Exists(_folder.File(".gitattributes"))}");
        }

        seen.Distinct().Count().ShouldBe(seen.Count);
        Ran.Of("git-setup", "--check", "--dry-run").Code.ShouldBe(2);
        new GitSetupVerb().Build(new Streams(() => Stream.Null, TextWriter.Null, TextWriter.Null)).Options.Select(option => option.Name).Order()
            .ShouldBe(["--check", "--dry-run", "--json"]);
    }

    [Fact]
    public void An_option_before_the_command_is_refused_whatever_it_is()
    {
        var streams = new Streams(() => Stream.Null, TextWriter.Null, TextWriter.Null);
        var options = Verbs.All.SelectMany(verb => verb.Build(streams).Options.Select(option => (Verb: verb.Name, Option: option.Name))).ToList();
        options.Count.ShouldBeGreaterThan(30);
        foreach (var (verb, option) in options)
        {
            var ran = Ran.Of(option, verb);
            ran.Code.ShouldBe(2, $"{option} {verb}");
            ran.Error.ShouldBe($"paneltui: '{option}' stands before the command '{verb}'; write it after: paneltui {verb} {option} ...\nTry 'paneltui {verb} --help'.\n");
        }

        Ran.Of("--ascii", "check", "x").Code.ShouldBe(2);
        Ran.Of("shed.yaml", "check").Code.ShouldBe(2);
        Ran.Of("--no-input", "rules").Code.ShouldBe(0);
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>A run: what it printed, and what it left in the folder.</summary>
    private sealed record Outcome(Ran Ran, string Left)
    {
        public bool IsRefused => Ran is { Code: 2, Out: "" };
    }

    private Outcome Run(Scene scene, int[] chosen, Dictionary<string, Outcome> seen)
    {
        var key = string.Join(',', chosen);
        if (seen.TryGetValue(key, out var known)) return known;
        var folder = Path.GetDirectoryName(_folder.File("x"))!;
        Clear(folder);
        foreach (var (name, text) in scene.Files) _folder.File(name, text);
        var words = Words(scene, chosen);
        var ran = scene.Answers is { } answers ? Ran.Answering(answers, words) : Ran.Of(words);
        var left = string.Join('\n', Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Order().Select(file => $"{file}: {Convert.ToHexString(File.ReadAllBytes(file))}"));
        return seen[key] = new Outcome(ran, left);
    }

    /// <summary>In a dry run nothing is written, so an option that changes what is written cannot show.</summary>
    private static IEnumerable<int> Telling(Scene scene, int[] chosen) =>
        chosen.Where(option => scene.Options[option][0] == "--dry-run" || chosen.All(one => scene.Options[one][0] != "--dry-run"));

    private static void Clear(string folder)
    {
        foreach (var below in Directory.GetDirectories(folder)) Directory.Delete(below, recursive: true);
        foreach (var file in Directory.GetFiles(folder)) File.Delete(file);
    }

    private string[] Words(Scene scene, int[] chosen) =>
        [.. scene.Given.Concat(chosen.SelectMany(option => scene.Options[option])).Select(word => IsFile(word) ? _folder.File(word) : word)];

    private static bool IsFile(string word) => word == "permit" || Path.GetExtension(word) is ".yaml" or ".html" or ".svg";

    private static IEnumerable<int[]> Sets(int options, int most) =>
        Enumerable.Range(1, (1 << options) - 1).Select(mask => Enumerable.Range(0, options).Where(bit => (mask & (1 << bit)) != 0).ToArray()).Where(set => set.Length <= most);
}
