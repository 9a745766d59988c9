using System.ComponentModel;
using System.Diagnostics;

namespace PanelTui.CommandLine;

/// <summary>What another program printed and how it ended.</summary>
/// <param name="Code">Its exit code; <see cref="OutsideProgram.NotFound"/> when it is not installed or does not start.</param>
internal sealed record OutsideAnswer(int Code, byte[] Out, string Error);

/// <summary>The only place that starts another program.</summary>
/// <remarks>
/// A schedule often lies in a folder that somebody else filled, with programs in it. So a program is looked for in the
/// folders of PATH that are absolute, and neither in the current folder nor in the one it is to run in, whatever PATH
/// says. The program itself gets a PATH without those folders.
/// </remarks>
internal static class OutsideProgram
{
    /// <summary>The exit code of a shell for a program that is not there.</summary>
    public const int NotFound = 127;

    private const string PathVariable = "PATH";

    /// <summary>Runs a program without a terminal and waits for its end.</summary>
    /// <param name="name">A bare name, such as `git`.</param>
    /// <param name="folder">Where it runs.</param>
    /// <param name="environment">Variables to set, or to remove where the value is null.</param>
    /// <param name="arguments">Passed as they are; no shell reads them.</param>
    public static OutsideAnswer Run(
        string name, string folder, IEnumerable<KeyValuePair<string, string?>> environment, IEnumerable<string> arguments)
    {
        var folders = Trusted(Environment.GetEnvironmentVariable(PathVariable), Environment.CurrentDirectory, folder).ToList();
        if (Find(name, folders) is not { } program) return Missing(name);
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        start.Environment[PathVariable] = string.Join(Path.PathSeparator, folders);
        foreach (var (variable, value) in environment) start.Environment[variable] = value;
        return Run(name, start);
    }

    /// <summary>The full path of a program in these folders; null when it is in none of them.</summary>
    internal static string? Find(string name, IEnumerable<string> folders) => folders
        .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? $"{name}.exe" : name))
        .FirstOrDefault(IsExecutable);

    /// <summary>The folders of PATH that a program may come from.</summary>
    /// <param name="path">The value of PATH; null when it is not set.</param>
    /// <param name="untrusted">Folders, links followed, that nothing may come from.</param>
    internal static IEnumerable<string> Trusted(string? path, params string[] untrusted)
    {
        var never = untrusted.Select(Real).ToHashSet(StringComparer.Ordinal);
        return (path ?? "").Split(Path.PathSeparator)
            .Where(folder => Path.IsPathFullyQualified(folder) && !never.Contains(Real(folder)));
    }

    private static OutsideAnswer Run(string name, ProcessStartInfo start)
    {
        try
        {
#pragma warning disable RS0030 // The only place that starts another program.
            using var program = Process.Start(start)!;
#pragma warning restore RS0030
            program.StandardInput.Close();
            var error = program.StandardError.ReadToEndAsync();
            using var output = new MemoryStream();
            program.StandardOutput.BaseStream.CopyTo(output);
            program.WaitForExit();
            return new OutsideAnswer(program.ExitCode, output.ToArray(), error.GetAwaiter().GetResult().Trim());
        }
        catch (Exception error) when (error is Win32Exception or IOException)
        {
            return Missing(name);
        }
    }

    private static OutsideAnswer Missing(string name) => new(NotFound, [], $"{name} is not installed");

    private static bool IsExecutable(string file)
    {
        if (!File.Exists(file)) return false;
        const UnixFileMode execute = UnixFileMode.UserExecute | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute;
        return OperatingSystem.IsWindows() || (File.GetUnixFileMode(file) & execute) != 0;
    }

    /// <summary>The path with every link on the way followed; the path itself where it leads nowhere.</summary>
    private static string Real(string path)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        try
        {
            if (Path.GetDirectoryName(full) is not { } above) return full;
            var target = new DirectoryInfo(full).ResolveLinkTarget(returnFinalTarget: true);
            return target is null ? Path.Combine(Real(above), Path.GetFileName(full)) : Real(target.FullName);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return full;
        }
    }
}
