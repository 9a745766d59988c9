using System.Collections.Immutable;
using System.Diagnostics;

namespace PanelTui.Mutants;

/// <summary>A built test program, run class by class.</summary>
internal sealed class TestProgram(string path)
{
    /// <summary>A class of tests: the mutants that it comes by, and how long it takes.</summary>
    public sealed record Covered(TestProgram Program, string Name, ImmutableHashSet<int> Mutants, TimeSpan Takes);

    private static readonly TimeSpan LongestClass = TimeSpan.FromMinutes(10);

    public IEnumerable<string> Classes => Lines(["-list", "classes", "-noLogo"])
        .Select(line => line.Trim()).Where(line => line.StartsWith("PanelTui.", StringComparison.Ordinal));

    /// <summary>Runs a class as it is; null where it fails without any mutant.</summary>
    public Covered? Cover(string name)
    {
        var trace = Path.GetTempFileName();
        var watch = Stopwatch.StartNew();
        var passed = Run([name], -1, LongestClass, trace);
        var seen = File.ReadAllLines(trace).Select(int.Parse).ToImmutableHashSet();
        File.Delete(trace);
        return passed ? new Covered(this, name, seen, watch.Elapsed) : null;
    }

    /// <summary>True when all tests of the classes pass with the mutant; one that does not end is a failure.</summary>
    public bool Run(IEnumerable<string> classes, int mutant, TimeSpan limit, string? trace = null)
    {
        using var process = Start([.. classes.SelectMany(name => new[] { "-class", name }), "-stopOnFail", "-noLogo"], mutant, trace);
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        if (process.WaitForExit(limit)) return process.ExitCode == 0;
        process.Kill(entireProcessTree: true);
        return false;
    }

    private List<string> Lines(string[] arguments)
    {
        using var process = Start(arguments, -1, null);
        var lines = process.StandardOutput.ReadToEnd().Split('\n').ToList();
        process.WaitForExit();
        return lines;
    }

    private Process Start(string[] arguments, int mutant, string? trace)
    {
        var start = new ProcessStartInfo("dotnet", [path, .. arguments]) { RedirectStandardOutput = true };
        start.Environment["PANELTUI_MUTANT"] = $"{mutant}";
        if (trace is not null) start.Environment["PANELTUI_MUTANT_TRACE"] = trace;
        return Process.Start(start)!;
    }
}
