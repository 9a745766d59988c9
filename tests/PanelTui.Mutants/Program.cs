using System.Globalization;
using PanelTui.Mutants;

// dotnet run -c Release --project tests/PanelTui.Mutants -- engine --count 200 --seed 1
var count = Option("--count", 200);
var seed = Option("--seed", 1);
var root = Up(Directory.GetCurrentDirectory());
if (args is ["uncalled"])
{
    foreach (var line in new Uncalled(root).Lines()) Console.WriteLine(line);
    return 0;
}

var (project, tests, later) = args.FirstOrDefault() switch
{
    "engine" => ("PanelTui.Engine", "PanelTui.Engine.Tests", "PanelTui.Documents.Tests"),
    "documents" => ("PanelTui.Documents", "PanelTui.Documents.Tests", null),
    _ => throw new ArgumentException("Say what: engine, documents, or uncalled."),
};
var workshop = new Workshop(root, Path.Combine(Path.GetTempPath(), $"mutants-{args[0]}"), project);
workshop.Copy();
var mutants = workshop.Build(workshop.Find(seed), count, [tests, .. later is null ? Array.Empty<string>() : [later]]);
var covered = Covering(tests, _ => true);
// Cases of rules and of demand are read from files, so the engine's tests of them live beside the reader.
if (later is not null) covered.AddRange(Covering(later, name => name.Contains("Case", StringComparison.Ordinal)));

var known = Known.Read(Path.Combine(root, "tests", "PanelTui.Mutants", "equivalent.txt"));
var (killed, equivalent, alive) = (0, 0, new List<string>());
foreach (var (number, mutation) in mutants)
{
    if (IsKilled(number)) killed++;
    else if (known.Contains(mutation.Key)) equivalent++;
    else
    {
        alive.Add($"{mutation}");
        Console.WriteLine($"alive  {mutation}");
    }
}

var judged = mutants.Count - equivalent;
Console.WriteLine(string.Create(
    CultureInfo.InvariantCulture,
    $"{project}, seed {seed}: {mutants.Count} mutants, {equivalent} equivalent, {killed} of {judged} killed ({100.0 * killed / judged:0.0}%)."));
return alive.Count * 100 > judged * 15 ? 1 : 0;

List<TestProgram.Covered> Covering(string name, Func<string, bool> isWanted)
{
    var program = new TestProgram(Path.Combine(workshop.Folder, "tests", name, "bin", "Release", "net10.0", $"{name}.dll"));
    var all = new List<TestProgram.Covered>();
    foreach (var one in program.Classes.Where(isWanted).ToList())
    {
        if (program.Cover(one) is { } passed) all.Add(passed);
        else Console.Error.WriteLine($"{one} fails without a mutant and is left out.");
    }

    return all.Count > 0 ? all : throw new InvalidOperationException($"No class of {name} passes without a mutant.");
}

// The quickest tests first: most mutants die by them.
bool IsKilled(int number) => covered.Where(one => one.Mutants.Contains(number))
    .OrderBy(one => one.Takes)
    .Select((one, at) => (one, Step: at < 6 ? 0 : at < 20 ? 1 : 2))
    .GroupBy(pair => (pair.one.Program, pair.Step), pair => pair.one)
    .Any(group => !group.Key.Program.Run(
        group.Select(one => one.Name), number, TimeSpan.FromSeconds(60) + (group.Aggregate(TimeSpan.Zero, (sum, one) => sum + one.Takes) * 5)));

int Option(string name, int otherwise) => Array.IndexOf(args, name) is var at and >= 0
    ? int.Parse(args[at + 1], CultureInfo.InvariantCulture)
    : otherwise;

static string Up(string folder) => File.Exists(Path.Combine(folder, "PanelTui.sln"))
    ? folder
    : Up(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("PanelTui.sln is in no folder above."));
