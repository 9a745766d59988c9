using System.Diagnostics;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp;
using PanelTui.Documents.Tests;

namespace PanelTui.Mutants;

/// <summary>A copy of the repository in which one project is built with all its mutants.</summary>
internal sealed partial class Workshop(string root, string folder, string project)
{
    private const int MostBuilds = 12;

    private string Sources => Path.Combine("src", project);

    public string Folder => folder;

    public void Copy()
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
        foreach (var part in new[] { "src", "tests", "docs", "examples" }) CopyFolder(part);
        foreach (var file in Directory.GetFiles(root)) File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        File.WriteAllText(Path.Combine(folder, Sources, "Switch.cs"), MutatedSource.Switch);
    }

    /// <summary>All changes that can be tried, in an order that the seed decides.</summary>
    public List<Mutation> Find(int seed)
    {
        var all = Directory.GetFiles(Path.Combine(root, Sources), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Path.Combine(root, Sources), file).Replace('\\', '/'))
            .Where(file => !file.StartsWith("obj/", StringComparison.Ordinal) && !file.StartsWith("bin/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .SelectMany(file => MutationFinder.In(CSharpSyntaxTree.ParseText(Original(file)), file))
            .Where(one => !one.Mutated.Contains('\n', StringComparison.Ordinal))
            .ToList();
        var dice = new Dice(seed);
        for (var last = all.Count - 1; last > 0; last--)
        {
            var chosen = dice.Next(last + 1);
            (all[last], all[chosen]) = (all[chosen], all[last]);
        }

        return all;
    }

    /// <summary>Builds so many of the changes at once; those that do not compile give way to the next ones.</summary>
    public List<(int Number, Mutation Mutation)> Build(List<Mutation> all, int count, params string[] tests)
    {
        var (chosen, refused) = (all.Take(count).ToList(), new HashSet<Mutation>());
        for (var build = 0; build < MostBuilds; build++)
        {
            var numbered = chosen.Select((mutation, number) => (number, mutation)).ToList();
            Write(numbered);
            var errors = Built(Path.Combine(Sources, $"{project}.csproj"));
            Console.Error.WriteLine($"{chosen.Count} mutants, {errors.Count} lines with errors");
            if (errors.Count == 0)
            {
                foreach (var test in tests.Where(test => Built(Path.Combine("tests", test, $"{test}.csproj")).Count > 0))
                    throw new InvalidOperationException($"{test} does not build.");
                return numbered;
            }

            refused.UnionWith(chosen.Where(one => Enumerable
                .Range(one.Line, 1 + one.Original.Count(letter => letter == '\n')).Any(line => errors.Contains((one.File, line)))));
            chosen = [.. all.Where(one => !refused.Contains(one)).Take(count)];
        }

        throw new InvalidOperationException("The mutated project does not build.");
    }

    private void Write(List<(int Number, Mutation Mutation)> mutants)
    {
        foreach (var file in Directory.GetFiles(Path.Combine(root, Sources), "*.cs", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Path.Combine(root, Sources), path).Replace('\\', '/'))
            .Where(file => !file.StartsWith("obj/", StringComparison.Ordinal) && !file.StartsWith("bin/", StringComparison.Ordinal)))
        {
            var text = MutatedSource.Of(Original(file), [.. mutants.Where(one => one.Mutation.File == file)]);
            File.WriteAllText(Path.Combine(folder, Sources, file), text);
        }
    }

    private HashSet<(string File, int Line)> Built(string csproj)
    {
        var start = new ProcessStartInfo(
            "dotnet",
            ["build", "-c", "Release", csproj, "-clp:NoSummary", "-p:RunAnalyzers=false", "-p:TreatWarningsAsErrors=false",
                "-p:WarningLevel=0", "-p:GenerateDocumentationFile=false", "-p:IsAotCompatible=false", "-nodeReuse:false"])
        {
            RedirectStandardOutput = true,
            WorkingDirectory = folder,
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var sources = Path.Combine(folder, Sources) + Path.DirectorySeparatorChar;
        var errors = Error().Matches(output)
            .Select(match => (match.Groups[1].Value.Replace(sources, "", StringComparison.Ordinal).Replace('\\', '/'), int.Parse(match.Groups[2].Value)))
            .ToHashSet();
        if (errors.Count == 0 && process.ExitCode != 0) throw new InvalidOperationException(output);
        return errors;
    }

    private string Original(string file) => File.ReadAllText(Path.Combine(root, Sources, file));

    private void CopyFolder(string part)
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine(root, part), "*", SearchOption.AllDirectories))
        {
            var relative = Path.GetRelativePath(root, file);
            if (relative.Split(Path.DirectorySeparatorChar).Any(name => name is "bin" or "obj")) continue;
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(folder, relative))!);
            File.Copy(file, Path.Combine(folder, relative));
        }
    }

    [GeneratedRegex(@"^\s*(.+?\.cs)\((\d+),\d+\): error ", RegexOptions.Multiline)]
    private static partial Regex Error();
}
